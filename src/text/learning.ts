import type { LevelName } from "../core/body/vocabulary";
import type { LengthUnit } from "../core/lengthText";
import type { Millimetres } from "../core/units";
import { levelWords } from "./pictures";
import { thinText } from "./thinText";

/** Words of what the tape shows: how much a layer adds, the readings behind it, and whether it is done. */
export const learningWords = {
  title: "From your tape",
  mayBe: "What one layer may add under the tape",
  is: "What one layer adds under the tape",
  working: "Working it out…",
  replanned: "The remaining pieces are updated. Undo brings the earlier plan back.",
  started: (amount: string): string => `Starting figure: ${amount}.`,
  inStack: (amount: string): string => `In a stack each layer adds about ${amount}, because those beneath compress.`,
  nothingRead:
    "Nothing has been measured over the form yet. Until then the plan goes by the starting figure, which may be off by half.",
  readings: (count: number): string => (count === 1 ? "From one measurement." : `From ${count} measurements.`),
  readingsTitle: "The measurements behind it",
  read: (what: string, length: string): string => `${what} ${length}`,
  trialRead: (batting: string, before: string, after: string): string =>
    `Trial of ${batting}: ${before}, then ${after}`,
  leaveOut: "Ignore this reading",
  leaveOutOf: (reading: string): string => `Ignore this reading: ${reading}`,
  leftOut: "Ignored. Undo brings it back.",
  settled: "used in the updated plan",
  building: "the batting you build with",
  finishing: "the batting you finish with",
} as const;

/** A reading that this form with these pieces on cannot give: kept as it was typed, and used for nothing. */
export const impossibleWords = {
  why: (what: string, read: string, least: string, most: string): string =>
    `${what}: ${read} is not possible: with these pieces on, the tape can read ${least} to ${most}.`,
  field: (least: string, most: string): string =>
    `Not possible here, so not used: the tape can read ${least} to ${most}. Measure again.`,
  behind: "not possible, not used",
} as const;

export const errorWords = {
  title: "How closely do you measure?",
  explain: (amount: string): string =>
    `Nine in ten of your measurements are taken to be within ${amount}. The steadier the hand, the more each one counts.`,
  choice: { careful: "very steady", usual: "usual at home", hasty: "in a hurry" },
} as const;

export type ReadingCare = keyof typeof errorWords.choice;

export interface LayerSpan {
  readonly layer: Millimetres;
  readonly least: Millimetres;
  readonly most: Millimetres;
}

/** How much a layer adds, or before anything was measured only may add, with the interval that holds nine times in ten. */
export const layerSentence = (
  { layer, least, most }: LayerSpan,
  unit: LengthUnit,
  standing: "read" | "guessed",
): string =>
  `One layer ${standing === "read" ? "adds" : "may add"} about ${thinText(layer, unit)} under the tape: most likely ${thinText(least, unit).replace(/ (in|mm)$/, "")} to ${thinText(most, unit)}.`;

/** The levels as a list: "the waist and the high hip"; all of them are "every level line". */
export function levelList(levels: readonly LevelName[], all: number): string {
  if (levels.length === all) return "every level line";
  return listed(levels.map((level) => `the ${levelWords[level]}`));
}

export const doneKinds = ["there", "notYet", "over", "asNearAsItGets"] as const;
export type DoneKind = (typeof doneKinds)[number];

export const doneWords = {
  title: "Is it done?",
  why: (home: string, aim: string): string =>
    `On target means within ${home} all around, in front and in back: a tape at home cannot tell closer. The plan itself aims at ${aim}.`,
  again: (hasCover: boolean): string =>
    `Measure every level line again after each step${hasCover ? ", and once more over the cover" : ""}.`,
  unread: (what: "none" | "girthOnly", hasCover: boolean): string =>
    `${what === "none" ? "" : "front and back "}not measured${hasCover ? " over the cover" : ""} yet`,
  overall: {
    done: "Done: every level line is on target.",
    doneShort: "Done, as far as padding goes.",
    stopHere: "Every level line is on target already: you may stop here. The remaining pieces would only refine it.",
    unread: (levels: string, hasCover: boolean): string =>
      `Only the tape can tell${hasCover ? ", over the cover as well" : ""}: measure ${levels}, all around and in front.`,
    pinning: (count: number): string =>
      count === 1 ? "Not yet: one piece is still to be pinned." : `Not yet: ${count} pieces are still to be pinned.`,
    off: (levels: string): string => `Not yet: look at ${levels}.`,
  },
} as const;

const partWords = { girth: "all around", frontArc: "in front", backArc: "in back" } as const;

const doneSentences: { readonly [kind in DoneKind]: (amount: string, part: string) => string } = {
  there: () => "on target",
  notYet: (amount, part) => `not yet: ${amount} to go ${part}`,
  over: (amount, part) => `${amount} over ${part}`,
  asNearAsItGets: (amount, part) => `as near as padding gets: ${amount} off ${part}`,
};

/** What is only expected is never given as if the tape had read it. */
const expectedSentences: { readonly [kind in DoneKind]: (amount: string, part: string) => string } = {
  there: () => "should be on target",
  notYet: (amount, part) => `${amount} to go ${part}`,
  over: (amount, part) => `perhaps ${amount} over ${part}`,
  asNearAsItGets: (amount, part) => `should be as near as padding gets: ${amount} off ${part}`,
};

export const doneSentence = (
  kind: DoneKind,
  amount: string,
  part: keyof typeof partWords,
  standing: "read" | "expected",
): string => (standing === "read" ? doneSentences : expectedSentences)[kind](amount, partWords[part]);

export const trialName = "trial";

const listed = (items: readonly string[]): string =>
  items.length < 2 ? (items[0] ?? "") : `${items.slice(0, -1).join(", ")} and ${items[items.length - 1] ?? ""}`;
