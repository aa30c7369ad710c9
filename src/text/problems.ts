import type { MeasurementProblem } from "../core/body/plausibility";
import type { BattingProblem } from "../core/checkBatting";
import { type LengthProblem, type LengthStep, type LengthUnit, lengthSteps } from "../core/lengthText";
import type { Millimetres } from "../core/units";
import type { FilePath, FittingProblem, PieceProblem } from "../document/fittingProblem";
import { measurementInSentence } from "./measurements";
import { thinText } from "./thinText";
import { writtenLength } from "./writtenLength";

/**
 * One sentence or two for every problem: what was read, what was expected, and what to do now, in the unit of the
 * person. A body is never wrong; a measurement may be.
 */
export function lengthProblemText(problem: LengthProblem, step: LengthStep): string {
  const example = `such as ${examples[problem.unit]}`;
  switch (problem.code) {
    case "empty":
      return `Nothing was typed. Type a length, ${example}.`;
    case "notALength":
      return `“${problem.read}” cannot be read as a length. Type one number, ${example}.`;
    case "badFraction":
      return `The fraction in “${problem.read}” cannot be read. Type a proper fraction, such as 34 3/4.`;
    case "notPositive":
      return `“${problem.read}” is not more than zero. Type what the tape shows, ${example}.`;
    case "unknownUnit":
      return `“${problem.unitRead}” is not a unit this tool reads. Use in, cm or mm, ${example}.`;
    case "tooLong":
      return `“${problem.read}” is longer than any tape; the most is ${writtenLength(problem.longest, step)}. Check the unit.`;
    case "ambiguous":
      return `“${problem.read}” can mean ${exactly(problem.either)} or ${exactly(problem.or)}. Type it without the mark, or with another unit.`;
  }
}

const examples: { readonly [unit in LengthUnit]: string } = { in: "34 3/4", cm: "88.5", mm: "885" };

/** Only in millimeters is a comma or a point between three figures in doubt: in every other unit it would be longer than any tape. */
const exactly = (length: Millimetres): string => `${length} mm`;

export function measurementProblemText(problem: MeasurementProblem, step: LengthStep): string {
  const names = problem.names.map(measurementInSentence);
  const [first = "", second = ""] = names;
  const whose = problem.whose === "body" ? "The person’s" : "The form’s";
  if (problem.code === "missing") return `${whose} ${first} is missing. Measure it: the plan starts from it.`;
  if (problem.code === "notALength") {
    return `${whose} ${first} is ${problem.got}, which is no length. Type what the tape shows, such as ${examples[lengthSteps[step].unit]}.`;
  }
  const length = (value: Millimetres): string => writtenLength(value, step);
  const got = length(problem.got);
  const { most } = problem.expected;
  const inUnit = `${whose} ${listed(names)}: ${got}${names.length > 1 ? " and so on" : ""}`;
  switch (problem.code) {
    case "impossible":
      return `${whose} ${first} reads ${got}, which no tape can read there. Check the unit, and measure it again.`;
    case "inchesAsCentimetres":
      return `${inUnit} reads like inches typed as centimeters. Choose the unit, or measure it once more.`;
    case "centimetresAsInches":
      return `${inUnit} reads like centimeters typed as inches. Choose the unit, or measure it once more.`;
    case "arcNotShorterThanGirth":
      return `${whose} ${first} reads ${got}, which is not less than the ${second}; it can be ${length(most)} at most. Measure both again.`;
    case "arcDoesNotFitGirth":
      return `${whose} ${first} reads ${got}, and that does not go together with the ${second}. Check both marks at the sides, and measure both again.`;
    case "arcsMissGirth":
      return `${whose} ${names.slice(0, -1).join(" and ")} come to ${got} together, and that does not go with the ${names.at(-1)}. Check both marks at the sides, and measure all three again.`;
    case "quartersMissArc":
      return `${whose} ${first} and ${second} come to ${got} together, and that does not go with the ${names.at(-1)}. Check the mark at the center, and measure all three again.`;
    case "breadthDoesNotFitGirth":
      return `${whose} ${first} reads ${got}, and that does not go together with the ${second}. Measure it straight through, not around the front.`;
    case "bustNotAboveWaist":
      return `${whose} ${first} puts the bust ${got} below the nape, and the ${second} puts the waist ${length(most)} below the nape: the bust must be higher. Measure both again.`;
    case "highHipNotAboveFullHip":
      return `${whose} ${first} reads ${got}, which is not less than the ${second}, ${length(most)}. Measure both again from the waist elastic.`;
    case "heightDoesNotFitNape":
      return `${whose} ${first} and ${second} put the line ${got} below the nape, where it cannot lie. Measure both again above the same floor.`;
    case "linesOutOfOrder":
      return `${whose} ${first} puts its line ${got} below the nape, which is not below the line of the ${second}. Measure both again.`;
    case "heightWithoutNape":
      return `Please check: ${lower(whose)} ${first} is missing beside a height of ${got}. A distance below the nape typed as a height would read like this; if it is right, measure the nape above the same floor, for without it no height is used.`;
    case "linesClose":
      return `Please check: ${lower(whose)} ${first} and ${second} put two lines only ${got} apart. A height typed at the wrong line would read like this; if the tape says so again, it is right.`;
    case "heightsDisagree":
      return `Please check: ${lower(whose)} ${first} puts its line ${got} below the nape, and the ${second} puts it elsewhere. A mistake in the unit or with the tape in one of them would read like this; if the tape says both again, it is right, and the first one counts.`;
    case "unusual":
      return `Please check: ${lower(whose)} ${first} reads ${got}. A mistake in the unit or with the tape would read like this; if the tape says so again, it is right.`;
    case "unusualProportion":
      return `Please check: ${lower(whose)} ${first} reads ${got}. Beside that ${second}, a mistake in the unit or with the tape would read like this; if the tape says so again, it is right.`;
    case "unusualFrontShare":
      return `Please check: ${lower(whose)} ${first} reads ${got}. Beside that ${second}, side marks that are not straight down from the underarm would read like this; if the tape says so again, it is right.`;
    case "unevenSides":
      return `Please check: ${lower(whose)} ${first} and ${second} differ by ${got}. A center mark out of place would read like this; if the tape says so again, it is right, for sides differ.`;
  }
}

/** A layer is written as finely as its bounds need: to a tenth of a millimeter, or to a 32nd of an inch. */
export function battingProblemText({ batting, got, least, most }: BattingProblem, step: LengthStep): string {
  const { unit } = lengthSteps[step];
  const bound = got > most ? `at most ${thinText(most, unit)}` : `at least ${thinText(least, unit)}`;
  const what = batting === "" ? "the batting" : `“${batting}”`;
  return `One layer of ${what} is given as ${thinText(got, unit)}; under a snug tape a layer is ${bound}. Check the unit, for example ${unit === "in" ? "1/4 in" : "6 mm"}.`;
}

export function fittingProblemText(problem: FittingProblem, step: LengthStep): string {
  const at = problem.path.length === 0 ? "The file" : pathText(problem.path);
  switch (problem.code) {
    case "notJson":
      return "This file is not a fitting, or a part of it is lost. Open the file that was saved here; in one written by hand, look for a missing comma, quote or bracket.";
    case "tooLarge":
      return `The file holds more than a fitting can: at most ${problem.most} ${limitWords[problem.what]}.`;
    case "newerVersion":
      return `The file is of version ${problem.got}; this tool reads up to version ${problem.newest}. Open it with a newer Padwright.`;
    case "missing":
      return `${at} has no “${problem.key}”. Add it.`;
    case "unknownKey":
      return `${at} has “${problem.key}”, which this tool does not know.${problem.nearest === null ? " Take it out, or correct it." : ` Did you mean “${problem.nearest}”?`}`;
    case "wrongKind":
      return `${at} is ${kindText(problem.got)}; expected ${alternatives(problem.expected.map(kindText))}.`;
    case "notAllowed":
      return `${at} is “${problem.got}”; expected ${alternatives(problem.expected.map((value) => `“${value}”`))}.`;
    case "outOfRange":
      return `${at} is “${problem.got}”, which is too ${problem.side === "atMost" ? "much" : "little"}; it can be ${problem.limit} ${problem.side === "atMost" ? "at most" : "at least"}.`;
    case "tooFew":
      return `${at} has ${problem.got === 0 ? "nothing in it" : `${problem.got} in it`}; it needs at least ${problem.least}. Take the piece out of the file.`;
    case "tooMany":
      return `${at} has ${problem.got} in it; there can be ${problem.most} at most.`;
    case "impossiblePiece":
      return `${at} ${pieceProblemText(problem.problem)} Take the piece out of the file, or correct it.`;
    case "piecesAtOnce":
      return `With ${at} more than ${problem.most} pieces are on the form at once. Take pieces out of the file.`;
    case "unreadableLength":
      return `${at}: ${lengthProblemText(problem.problem, step)}`;
    case "sizeWithoutTable":
      return `${at} is “${problem.got}”, but no size chart is named. Add “table”, for example “misses”.`;
    case "unknownTable":
      return `${at} is “${problem.got}”; the size charts known here are ${alternatives(problem.expected.map((value) => `“${value}”`))}.`;
    case "unknownSize":
      return `${at} is “${problem.got}”; that size chart has the sizes ${problem.expected.join(", ")}.`;
    case "tableLacks":
      return `The size chart “${problem.got}” does not give the ${listed(problem.names.map(measurementInSentence))}. Measure it on the form and add it.`;
  }
}

function pieceProblemText(problem: PieceProblem): string {
  return problem.is === "order"
    ? `is at ${problem.at} mm, and the row before it at ${problem.above} mm; each row must lie below the one before.`
    : `starts at ${problem.start} mm and ends at ${problem.end} mm; a row must not end before it starts.`;
}

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;

const lower = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;

const alternatives = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} or ${names.at(-1)}`;

/** A place in a file as people point at it: `work[2].piece.rows`. */
const pathText = (path: FilePath): string =>
  path.map((step, i) => (typeof step === "number" ? `[${step}]` : i === 0 ? step : `.${step}`)).join("");

/** What a file can hold too much of. */
export const limitWords = {
  characters: "characters of text",
  depth: "levels of nesting",
  values: "values",
  names: "keys in one group",
} as const;

const kindWords: { readonly [kind: string]: string } = {
  object: "a group of keys in braces",
  record: "a group of keys in braces",
  array: "a list",
  string: "a text",
  boolean: "true or false",
  null: "null",
  undefined: "missing",
};
const kindText = (kind: string): string => kindWords[kind] ?? `a ${kind}`;
