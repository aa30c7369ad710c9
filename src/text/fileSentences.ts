import type { ImportOutcome } from "../app/share/fileImport";
import type { FileProblem } from "../app/share/fittingFile";
import type { SheetProblem } from "../app/share/measurementSheet";
import type { AddedFitting } from "../app/storage/addFittings";
import type { NotSaved } from "../app/storage/fittingOutcome";
import type { OpenState } from "../app/storage/openFitting";
import { type LengthUnit, tapeStep } from "../core/lengthText";
import { intakeWords, refusedTexts } from "./files";
import { fileProblemTexts, fileWords, libraryWords, sheetProblemTexts, troubleTexts } from "./library";
import { measurementTexts } from "./measurements";
import { fittingProblemText, lengthProblemText, limitWords } from "./problems";

/** What came of opening a file, as sentences: every fitting of it, or every reason against it. */
export function importSentences(outcome: ImportOutcome, unit: LengthUnit): readonly string[] {
  if (outcome.kind === "imported") return importedSentences(outcome.fittings);
  if (outcome.kind === "notSaved") return [fileWords.refused, refusedTexts[outcome.reason]];
  return [
    fileWords.refused,
    ...outcome.problems.flatMap((problem) => fileProblemSentences(problem, unit)).slice(0, most),
  ];
}

/** Opened is said only where something was added; of very many the first ones are named. */
function importedSentences(fittings: readonly AddedFitting[]): readonly string[] {
  if (fittings.length === 0) return [fileWords.emptyBackup];
  const isAnyNew = fittings.some(({ kind }) => kind !== "alreadyHere");
  const named = fittings.slice(0, mostNamed).map(addedSentence);
  const more = fittings.length - named.length;
  return [...(isAnyNew ? [fileWords.imported] : []), ...named, ...(more > 0 ? [intakeWords.more(more)] : [])];
}

export const sheetSentences = (problems: readonly SheetProblem[], unit: LengthUnit): readonly string[] => [
  fileWords.refused,
  ...problems.slice(0, most).map((problem) => sheetProblemSentence(problem, unit)),
];

function addedSentence(added: AddedFitting): string {
  const title = added.title === "" ? libraryWords.untitled : added.title;
  return fileWords[added.kind](title);
}

/** More than these nobody reads; the first ones say what kind of file it is. */
const most = 12;
const mostNamed = 50;

function fileProblemSentences(problem: FileProblem, unit: LengthUnit): readonly string[] {
  switch (problem.code) {
    case "tooLarge":
      return [fileProblemTexts.tooLarge(`${Math.round(problem.most / 1_000_000)} MB`)];
    case "tooMuch":
      return [fileProblemTexts.tooMuch(problem.most, limitWords[problem.what])];
    case "damaged":
      return [problem.number === null ? fileProblemTexts.damaged : damagedFitting(problem.number)];
    case "badFitting":
      return problem.problems.map((one) =>
        fileProblemTexts.inFitting(problem.number, fittingProblemText(one, tapeStep[unit])),
      );
    default:
      return [fileProblemTexts[problem.code]];
  }
}

const damagedFitting = (number: number): string =>
  number === 1 ? fileProblemTexts.damaged : fileProblemTexts.damagedFitting(number);

function sheetProblemSentence(problem: SheetProblem, unit: LengthUnit): string {
  switch (problem.code) {
    case "openQuote":
    case "afterQuote":
    case "tooManyColumns":
      return sheetProblemTexts[problem.code](problem.line);
    case "noColumns":
      return sheetProblemTexts.noColumns(problem.expected.join(", "));
    case "unknownMeasurement":
      return sheetProblemTexts.unknownMeasurement(problem.line, problem.got, problem.nearest);
    case "twice":
      return sheetProblemTexts.twice(problem.line, measurementTexts[problem.name].label);
    case "unknownUnit":
      return sheetProblemTexts.unknownUnit(problem.line, problem.got);
    case "unreadableLength":
      return sheetProblemTexts.unreadableLength(problem.line, lengthProblemText(problem.problem, tapeStep[unit]));
    default:
      return sheetProblemTexts[problem.code];
  }
}

/** What a person is told where a wish was refused; null where it was done. */
export const refusalOf = (outcome: { readonly kind: string } | NotSaved): string | null =>
  isNotSaved(outcome) ? refusedTexts[outcome.reason] : null;

const isNotSaved = (outcome: { readonly kind: string } | NotSaved): outcome is NotSaved => outcome.kind === "notSaved";

/** The first of several refusals. */
export const refusalAmong = (outcomes: readonly ({ readonly kind: string } | NotSaved)[]): string | null =>
  outcomes.map(refusalOf).find((refusal) => refusal !== null) ?? null;

/** Why the newest change of the open fitting is not saved; that is tried again by itself. */
export const unsavedText = (open: OpenState | null): string =>
  troubleTexts[open?.saving.kind === "notSaved" ? open.saving.refusal.reason : "failed"];
