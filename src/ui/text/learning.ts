import type { LevelName } from "../../core/body/vocabulary";
import type { LengthUnit } from "../../core/lengthText";
import type { PieceZone } from "../../core/padding/piece";
import type { CutUse } from "../../core/plan/cutUse";
import type { PlanChange } from "../../core/plan/planChange";
import type { Millimetres } from "../../core/units";
import { levelWords, lineWords } from "./pictures";
import { thinText } from "./thinText";

/** Words of what the tape shows: the trial of one layer, how much a layer adds, what a new plan would change, and whether it is done. */
export const learningWords = {
  title: "From your tape",
  mayBe: "What one layer may add under the tape",
  is: "What one layer adds under the tape",
  newsTitle: "What is new",
  working: "Working it out…",
  replan: "Update the remaining pieces",
  replanned: "The remaining pieces are updated. Undo brings the earlier plan back.",
  stands: "The tape agrees with the plan: the remaining pieces stay as they are.",
  usesTitle: "What the remaining pieces can be cut from",
  correctionsTitle: "Where the padding is over",
  small: "A tape at home cannot tell so little: leave it, or correct it if you like.",
  readFirst: (places: string): string => `Perhaps over as well: ${places}. Measure there before you take anything off.`,
  peeled: "It is off",
  trimmed: "It is narrower",
  logged: "Noted. Now measure again.",
  started: (amount: string): string => `Starting figure: ${amount}.`,
  inStack: (amount: string): string => `In a stack each layer adds about ${amount}, because those beneath compress.`,
  nothingRead:
    "Nothing has been measured over the form yet. Until then the plan goes by the starting figure, which may be off by half.",
  readings: (count: number): string => (count === 1 ? "From one measurement." : `From ${count} measurements.`),
  readingsTitle: "The measurements behind it",
  read: (what: string, length: string): string => `${what} ${length}`,
  trialRead: (batting: string, before: string, after: string): string =>
    `Trial of ${batting}: ${before}, then ${after}`,
  surprise: (what: string, read: string, expected: string): string =>
    `${what}: ${read} is typed; over these pieces the tape should read about ${expected}.`,
  surpriseDo: "Measure it once more; until then the plan does not use it.",
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
  todo: "It is saved, but not used. See that every piece on the form is marked as pinned, then measure again, or press “Ignore this reading”.",
  field: (least: string, most: string): string =>
    `Not possible here, so not used: the tape can read ${least} to ${most}. Measure again.`,
  behind: "not possible, not used",
} as const;

export const trialWords = {
  title: "Try one layer first",
  offer: "Before you cut: find out in two minutes how much one layer of your batting adds under the tape.",
  /** The same where a phone has no room for it. */
  offerShort: "Two minutes show what a layer adds.",
  open: "Try one layer",
  close: "Close the trial",
  how: "Wrap one layer around the bare form at the waist, edge to edge, and pin it. Measure before and after, each time snug and level.",
  before: "Waist before, on the bare form",
  after: "Waist after, over one layer",
  which: "Which batting?",
  pad: "Number pad for the trial",
  padInto: "Into:",
  about: (length: string): string => `about ${length}`,
  learn: "Save the trial",
  learned: "Noted. Take the trial layer off again before you go on.",
  again: "Try it once more",
  answer: "What it says",
  alone: (amount: string): string =>
    `By these two measurements alone one layer adds ${amount}; the plan weighs them with the starting figure.`,
  noMore: "After is not more than before. Were the two switched?",
  off: "Take the trial layer off again before you pin the first piece.",
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

const countWords = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"] as const;
const counted = (count: number): string => countWords[count] ?? String(count);

const layerWords: { readonly [zone in PieceZone]: string } = {
  around: "# all the way around",
  front: "front #",
  back: "back #",
  leftFront: "left front #",
  rightFront: "right front #",
  leftBack: "left back #",
  rightBack: "right back #",
  leftSide: "# at each side",
  rightSide: "# at each side",
  leftCup: "# in each cup",
  rightCup: "# in each cup",
};

type Reason = Exclude<PlanChange, { readonly kind: "same" }>["because"];
type Direction = Exclude<PlanChange["kind"], "same">;

const reasons: { readonly [kind in Direction]: { readonly [reason in Reason]: string } } = {
  fewer: {
    thicker: "your batting is thicker than expected",
    thinner: "your measurements ask for it",
    tape: "your measurements ask for it",
  },
  more: {
    thicker: "your measurements ask for it",
    thinner: "your batting is thinner than expected",
    tape: "your measurements ask for it",
  },
};

/** "Two fewer front layers at the waist: your batting is thicker than expected." */
export function newsSentence(change: PlanChange): string {
  if (change.kind === "same") return learningWords.stands;
  const { kind, layers, zone, level, because } = change;
  const what = layerWords[zone].replace("#", layers === 1 ? "layer" : "layers");
  return sentence(`${counted(layers)} ${kind} ${what} at the ${levelWords[level]}: ${reasons[kind][because]}`);
}

/** The levels as a list: "the waist and the high hip"; all of them are "every level line". */
export function levelList(levels: readonly LevelName[], all: number): string {
  if (levels.length === all) return "every level line";
  return listed(levels.map((level) => `the ${levelWords[level]}`));
}

export interface RestWords {
  /** The last piece to pin before the tape is read, as a sentence names it, or null to read at once. */
  readonly upTo: string | null;
  readonly isLast: boolean;
  readonly levels: string;
}

export function restSentence({ upTo, isLast, levels }: RestWords): string {
  if (upTo === null)
    return isLast
      ? `Every piece is on: measure ${levels} once more.`
      : `Measure ${levels} now, before you pin any more.`;
  if (isLast) return `Pin the remaining pieces, up to ${upTo}, then measure ${levels}.`;
  return `Pin up to ${upTo}, then measure ${levels}.`;
}

const fits: { readonly [fit in CutUse["fit"]]: string } = {
  asItIs: "as it is",
  trim: "cut down to the new outline",
};

/** What a piece can be made of: the names as a person reads them elsewhere. */
export function madeOfSentence(
  piece: string,
  cut: { readonly name: string; readonly fit: CutUse["fit"] } | null,
): string {
  if (cut === null) return `${piece}: cut a new one.`;
  return cut.name === piece && cut.fit === "asItIs"
    ? `${piece}: the one you have cut, as it is.`
    : `${piece}: the ${lower(cut.name)} you have cut, ${fits[cut.fit]}.`;
}

const halves = { front: "in front", back: "in back" } as const;
export type Half = keyof typeof halves;

export const placeOver = (level: LevelName, half: Half): string => `the ${levelWords[level]} ${halves[half]}`;

export interface CorrectionWords {
  readonly level: LevelName;
  readonly half: Half;
  /** As a sentence names it: "the front panel", "front panel 2". */
  /** As a sentence names it: "the front panel", "front panel 2". */
  readonly piece: string;
  /** What the tape itself reads over there; null where it has not read the half and the girth alone tells nothing. */
  readonly told: { readonly part: "girth" | Half; readonly over: string } | null;
  readonly how:
    | { readonly kind: "peel" }
    | { readonly kind: "pullThin" }
    | { readonly kind: "trim"; readonly eachSide: string; readonly reach: string };
}

/** How far over, by the one figure that stands beside the tape as well. */
export function overSentence({ level, half, told }: CorrectionWords): string {
  if (told === null) return `The padding at the ${levelWords[level]} may be over ${halves[half]}.`;
  const where = told.part === "girth" ? "" : `, ${halves[told.part]}`;
  return `Padding ${told.over} over at the ${levelWords[level]}${where}.`;
}

export function correctionSentence({ level, half, piece, how }: CorrectionWords): string {
  if (how.kind === "peel") return `Take ${piece} off again.`;
  if (how.kind === "pullThin")
    return `It lies in ${piece}: leave that on, and narrow a panel ${halves[half]} that crosses the ${lineWords[level]}, or leave it: the next pieces make it good.`;
  return `Narrow ${piece} by ${how.eachSide} at each side at the ${lineWords[level]}, running out to nothing ${how.reach} above and below it.`;
}

export const doneKinds = ["there", "notYet", "over", "asNearAsItGets"] as const;
export type DoneKind = (typeof doneKinds)[number];

export const doneWords = {
  title: "Is it done?",
  why: (home: string, aim: string): string =>
    `On target means within ${home} all around, in front and in back: a tape at home cannot tell closer. The plan itself aims at ${aim}.`,
  again: "Measure every level line again after each step, and once more over the cover.",
  unread: {
    padding: { none: "not measured over the padding yet", girthOnly: "front and back not measured yet" },
    cover: { none: "not measured over the cover yet", girthOnly: "front and back not measured over the cover yet" },
  },
  overall: {
    done: "Done: every level line is on target.",
    doneShort: "Done, as far as padding goes.",
    stopHere: "Every level line is on target already: you may stop here. The remaining pieces would only refine it.",
    unread: {
      padding: (levels: string): string =>
        `Every level line should be on target by now, and only the tape can tell: measure ${levels}, all around and in front.`,
      cover: (levels: string): string =>
        `Only the tape can tell, over the cover as well: measure ${levels}, all around and in front.`,
    },
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

export const placesOver = (places: readonly string[]): string => listed(places);

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
const lower = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
