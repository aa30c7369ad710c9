import type { MeasurementProblem } from "../../core/body/plausibility";
import type { MeasurementName } from "../../core/body/vocabulary";
import type { BattingProblem } from "../../core/checkBatting";
import { formatLength, type LengthProblem, type LengthStep, type LengthUnit, lengthSteps } from "../../core/lengthText";
import type { Millimetres } from "../../core/units";
import type { FilePath, FittingProblem, PieceProblem } from "../../document/fittingProblem";
import { measurementTexts } from "./measurements";

/**
 * One sentence or two for every problem: what was read, what was expected, and what to do now, in the unit of the
 * person. A body is never wrong; a reading may be.
 */
export function lengthProblemText(problem: LengthProblem, step: LengthStep): string {
  const example = `such as ${examples[problem.unit]}`;
  switch (problem.code) {
    case "empty":
      return `Nothing was typed. Type a length, ${example}.`;
    case "notALength":
      return `“${problem.read}” cannot be read as a length. Type one number, ${example}.`;
    case "badFraction":
      return `The fraction in “${problem.read}” cannot be read. Type a proper fraction, such as 38 1/2.`;
    case "notPositive":
      return `“${problem.read}” is not more than nothing. Type what the tape shows, ${example}.`;
    case "unknownUnit":
      return `“${problem.unitRead}” is not a unit this tool reads. Use in, cm or mm, ${example}.`;
    case "tooLong":
      return `“${problem.read}” is longer than any tape; the most is ${formatLength(problem.longest, step)}. Check the unit.`;
    case "ambiguous":
      return `“${problem.read}” can mean ${exactly(problem.either)} or ${exactly(problem.or)}. Type it without the mark, or with another unit.`;
  }
}

const examples: { readonly [unit in LengthUnit]: string } = { in: "38 1/2", cm: "97.5", mm: "975" };
const exactly = (length: Millimetres): string => `${length} mm`;

export function measurementProblemText(problem: MeasurementProblem, step: LengthStep): string {
  const names = problem.names.map(nameInSentence);
  const [first = "", second = ""] = names;
  const of = `of the ${problem.whose}`;
  if (problem.code === "missing") return `The ${first} ${of} is missing. Measure it: without it there is no plan.`;
  if (problem.code === "notALength") {
    return `The ${first} ${of} is ${problem.got}, which is no length. Type what the tape shows, such as ${examples[lengthSteps[step].unit]}.`;
  }
  const length = (value: Millimetres): string => formatLength(value, step);
  const got = length(problem.got);
  const { least, most } = problem.expected;
  const between = `between ${length(least)} and ${length(most)}`;
  switch (problem.code) {
    case "impossible":
      return `The ${first} ${of} reads ${got}; a tape there reads ${between}. Check the unit and measure it again.`;
    case "inchesAsCentimetres":
      return `${sentenceList(names)} ${of}: ${got}${names.length > 1 ? " and so on" : ""} looks like inches typed as centimetres; ${between} was expected for the ${first}. Check the unit, or measure again.`;
    case "centimetresAsInches":
      return `${sentenceList(names)} ${of}: ${got}${names.length > 1 ? " and so on" : ""} looks like centimetres typed as inches; ${between} was expected for the ${first}. Check the unit, or measure again.`;
    case "arcNotShorterThanGirth":
      return `The ${first} ${of} reads ${got}, which is not less than the ${second}; at most ${length(most)} was expected. Measure both again.`;
    case "arcDoesNotFitGirth":
      return `The ${first} ${of} reads ${got}; with that ${second} it must lie ${between}. Measure it again from side seam to side seam.`;
    case "arcsMissGirth":
      return `The ${names.slice(0, -1).join(" and the ")} ${of} come to ${got} together; the ${names.at(-1)} asks for ${between}. Pin the side seams and measure them again.`;
    case "quartersMissArc":
      return `The ${first} and the ${second} ${of} come to ${got} together; the ${names.at(-1)} asks for ${between}. Mark the centre and measure them again.`;
    case "breadthDoesNotFitGirth":
      return `The ${first} ${of} reads ${got}; with that ${second} it must lie ${between}. Measure it straight through, not round the front.`;
    case "bustNotAboveWaist":
      return `The ${first} ${of} puts the bust ${got} below the nape, and the ${second} puts the waist at ${length(most)}: the bust must be higher. Measure both again.`;
    case "highHipNotAboveFullHip":
      return `The ${first} ${of} reads ${got}, which is not less than the ${second} of ${length(most)}. Measure both again from the waist string.`;
    case "unusual":
      return `Please check: the ${first} ${of} reads ${got}; most lie ${between}. If the tape says so again, keep it.`;
    case "unusualProportion":
      return `Please check: the ${first} ${of} reads ${got}; with that ${second} most lie ${between}. If the tape says so again, keep it.`;
    case "unusualFrontShare":
      return `Please check: the ${first} ${of} reads ${got}; with that ${second} most lie ${between}. See that the side seams are pinned straight down, and keep it if the tape says so again.`;
    case "unevenSides":
      return `Please check: the ${first} and the ${second} ${of} differ by ${got}; most differ by ${length(most)} at most. Bodies are not mirror images: keep it if the tape says so again.`;
  }
}

export const battingProblemText = ({ batting, got, least, most }: BattingProblem, step: LengthStep): string =>
  `One layer of ${batting === "" ? "the batting" : `“${batting}”`} is given as ${formatLength(got, step)}; a layer under a snug tape is between ${exactly(least)} and ${exactly(most)}. Check the unit, for example 6 mm.`;

export function fittingProblemText(problem: FittingProblem, step: LengthStep): string {
  const at = problem.path.length === 0 ? "The file" : pathText(problem.path);
  switch (problem.code) {
    case "notJson":
      return "This file is not a fitting, or a part of it is lost: it cannot be read as one. Look for the file that was saved here; in one written by hand, look for a missing comma, quote or bracket.";
    case "tooLarge":
      return `The file holds more than a fitting can: at most ${problem.most} ${limitWords[problem.what]}.`;
    case "newerVersion":
      return `The file is of version ${problem.got}; this tool reads up to version ${problem.newest}. Open it with a newer Padwright.`;
    case "missing":
      return `${at} has no “${problem.key}”. Add it.`;
    case "unknownKey":
      return `${at} has “${problem.key}”, which is not known here.${problem.nearest === null ? " Take it out, or correct it." : ` Did you mean “${problem.nearest}”?`}`;
    case "wrongKind":
      return `${at} is ${kindText(problem.got)}; expected ${alternatives(problem.expected.map(kindText))}.`;
    case "notAllowed":
      return `${at} is “${problem.got}”; expected ${alternatives(problem.expected.map((value) => `“${value}”`))}.`;
    case "outOfRange":
      return `${at} is “${problem.got}”, which is too ${problem.side === "atMost" ? "much" : "little"}; ${problem.side === "atMost" ? "at most" : "at least"} ${problem.limit} was expected.`;
    case "tooFew":
      return `${at} has ${problem.got === 0 ? "nothing in it" : `${problem.got} in it`}; at least ${problem.least} were expected. Take the piece out of the file.`;
    case "tooMany":
      return `${at} has ${problem.got} in it; at most ${problem.most} were expected.`;
    case "impossiblePiece":
      return `${at} ${pieceProblemText(problem.problem)} Take the piece out of the file, or correct it.`;
    case "piecesAtOnce":
      return `With ${at} more than ${problem.most} pieces are on the form at once. Take pieces out of the file.`;
    case "unreadableLength":
      return `${at}: ${lengthProblemText(problem.problem, step)}`;
    case "sizeWithoutTable":
      return `${at} is “${problem.got}”, but no table is named. Add “table”, for example “misses”.`;
    case "unknownTable":
      return `${at} is “${problem.got}”; the tables known here are ${alternatives(problem.expected.map((value) => `“${value}”`))}.`;
    case "unknownSize":
      return `${at} is “${problem.got}”; that table has the sizes ${problem.expected.join(", ")}.`;
    case "tableLacks":
      return `The table “${problem.got}” does not say the ${sentenceList(problem.names.map(nameInSentence), "lower")}. Measure it on the form and add it.`;
  }
}

function pieceProblemText(problem: PieceProblem): string {
  return problem.is === "order"
    ? `is at ${problem.at} mm, and the row before it at ${problem.above} mm; each row must lie below the one before.`
    : `starts at ${problem.start} mm and ends at ${problem.end} mm; a row must not end before it starts.`;
}

/** A measurement's label inside a sentence. */
const nameInSentence = (name: MeasurementName): string => {
  const { label } = measurementTexts[name];
  return `${label.charAt(0).toLowerCase()}${label.slice(1)}`;
};

const sentenceList = (names: readonly string[], start: "capital" | "lower" = "capital"): string => {
  const joined = names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
  return start === "lower" ? joined : `The ${joined}`;
};

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
