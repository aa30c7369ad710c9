import type { ImportOutcome } from "../app/share/fileImport";
import type { LinksOutcome } from "../app/share/linkImport";
import type { SheetImportOutcome } from "../app/share/sheetImport";
import type { FileProblem } from "../app/share/fittingFile";
import type { SheetProblem } from "../app/share/measurementSheet";
import type { AddedFitting } from "../app/storage/addFittings";
import type { NotSaved } from "../app/storage/fittingOutcome";
import type { OpenState } from "../app/storage/openFitting";
import { type LengthUnit, tapeStep } from "../core/lengthText";
import { intakeWords, refusedTexts } from "./files";
import {
  fileProblemTexts,
  fileWords,
  libraryWords,
  linkProblemTexts,
  sheetProblemTexts,
  troubleTexts,
} from "./library";
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

/** One file of several that were opened together, and what came of it. */
export interface OpenedFile {
  readonly name: string;
  readonly outcome: ImportOutcome | SheetImportOutcome;
}

/** What came of files that were opened together: what was added, then, file by file, what was not and why. */
export function filesSentences(opened: readonly OpenedFile[], unit: LengthUnit): readonly string[] {
  const [only] = opened;
  if (only !== undefined && opened.length === 1) return outcomeSentences(only.outcome, unit);
  const imported = opened.flatMap(({ outcome }) => (outcome.kind === "imported" ? [outcome.fittings] : []));
  const refused = opened.filter(({ outcome }) => outcome.kind !== "imported");
  return [
    ...(imported.length === 0 ? [] : importedSentences(imported.flat())),
    ...refused.slice(0, mostNamed).flatMap(({ name, outcome }) => {
      const [, ...reasons] = outcomeSentences(outcome, unit);
      return [intakeWords.notFrom(name), ...reasons.slice(0, mostReasons)];
    }),
  ];
}

const outcomeSentences = (outcome: OpenedFile["outcome"], unit: LengthUnit): readonly string[] =>
  outcome.kind === "refusedSheet" ? sheetSentences(outcome.problems, unit) : importSentences(outcome, unit);

/** What came of pasted links: what was added, then which link was not and why. */
export function linksSentences({ taken, refused }: LinksOutcome): readonly string[] {
  const added =
    taken === null
      ? []
      : taken.kind === "imported"
        ? importedSentences(taken.fittings)
        : [intakeWords.noLinkTaken, refusedTexts[taken.reason]];
  const told = refused.slice(0, mostNamed);
  return [...added, ...told.map(({ number, code }) => intakeWords.fromLink(number, linkProblemTexts[code]))];
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
/** Of each of several files. */
const mostReasons = 3;
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
