import type { LevelName } from "../../core/body/vocabulary";
import { formatLength, type LengthUnit } from "../../core/lengthText";
import type { PieceZone } from "../../core/padding/piece";
import type { CutUse } from "../../core/plan/cutUse";
import type { PlanChange } from "../../core/plan/planChange";
import type { Millimetres } from "../../core/units";
import { levelWords } from "./pictures";

/** Words of what the tape teaches: the trial of one layer, what a layer is worth, what a new plan would change, and whether it is done. */
export const learningWords = {
  title: "What the tape has taught",
  mayBe: "What one layer may be worth",
  is: "What one layer is worth",
  newsTitle: "What is new",
  working: "Working it out…",
  replan: "Plan the rest from the tape",
  replanned: "The rest is planned anew. Undo brings the earlier plan back.",
  stands: "The tape agrees with the plan: nothing that is left would change.",
  usesTitle: "What the pieces that are left can be made of",
  usesNewTitle: "What the new pieces could be made of",
  correctionsTitle: "Where it is over",
  small: "Where it is no more than a tape at home can tell, leave it or mend it as you like.",
  readFirst: (places: string): string =>
    `Perhaps over as well: ${places}. Read the tape there before you take anything off.`,
  peeled: "It is off",
  trimmed: "It is trimmed",
  logged: "Noted. Now read the tape again.",
  started: (amount: string): string => `You had put down ${amount}.`,
  inStack: (amount: string): string =>
    `In a stack each layer counts for about ${amount}, because those beneath give way.`,
  nothingRead:
    "Nothing has been read over the form yet. Until then the plan believes the batting’s own figure, which may be out by half.",
  readings: (count: number): string =>
    count === 1 ? "From one reading of the tape." : `From ${count} readings of the tape.`,
  readingsTitle: "The readings behind it",
  read: (what: string, length: string): string => `${what} ${length}`,
  trialRead: (batting: string, before: string, after: string): string =>
    `Trial of ${batting}: ${before}, then ${after}`,
  surprise: (what: string, read: string, expected: string): string =>
    `${what} ${read} can hardly be: over these pieces it should be about ${expected}.`,
  surpriseDo: "Read it once more; until then nothing is learned from it.",
  leaveOut: "Ignore this reading",
  leaveOutOf: (reading: string): string => `Leave out ${reading}`,
  leftOut: "Left out. Undo brings it back.",
  settled: "part of the plan made since",
  building: "the batting you build with",
  finishing: "the batting you finish with",
} as const;

/** A reading that this form with these pieces on cannot give: kept as it was typed, and used for nothing. */
export const impossibleWords = {
  why: (what: string, read: string, least: string, most: string): string =>
    `${what} ${read} is not possible: with these pieces on, the tape can read ${least} to ${most}.`,
  todo: "It is kept, but not used. See that every piece on the form is marked as pinned, then measure again, or ignore this reading.",
  field: (least: string, most: string): string =>
    `Not possible here, so not used: the tape can read ${least} to ${most}. Measure again.`,
  behind: "not possible, not used",
} as const;

export const trialWords = {
  title: "Try one layer first",
  offer: "Before you cut: find out in two minutes what one layer of your batting is worth.",
  /** The same where a telephone has no room for it. */
  offerShort: "Two minutes tell what a layer is worth.",
  open: "Try one layer",
  close: "Put this away",
  how: "Wrap one layer round the bare form at the waist, ends butted, and pin it. Read the tape before and after, each time snug and level.",
  before: "Waist before, on the bare form",
  after: "Waist after, over one layer",
  which: "Which batting?",
  pad: "Number pad for the trial",
  padInto: "Into:",
  about: (length: string): string => `about ${length}`,
  learn: "Learn from it",
  learned: "Noted. Take the trial layer off again before you go on.",
  again: "Try it once more",
  answer: "What it says",
  alone: (amount: string): string =>
    `These two readings alone say ${amount}; what is believed weighs them against what was believed before.`,
  noMore: "After is not more than before. Were the two changed over?",
  off: "Take the trial layer off again before you pin the first piece.",
} as const;

export const errorWords = {
  title: "How closely do you read a tape?",
  explain: (amount: string): string =>
    `Taken now: nine in ten of your readings are within ${amount} of what they should be. The surer your hand, the more a reading counts.`,
  choice: { careful: "very steady", usual: "usual at home", hasty: "in a hurry" },
} as const;

export type ReadingCare = keyof typeof errorWords.choice;

export interface WorthSpan {
  readonly layer: Millimetres;
  readonly least: Millimetres;
  readonly most: Millimetres;
}

/** A thin thing: to a tenth of a millimetre, and beside inches to a sixteenth as well. */
export const thinText = (length: Millimetres, unit: LengthUnit): string => {
  const fine = formatLength(length, "0.1 mm");
  return unit === "in" ? `${formatLength(length, "1/16 in")} (${fine})` : fine;
};

/** What a layer is worth, or before anything was read only may be. */
export const worthSentence = (
  { layer, least, most }: WorthSpan,
  unit: LengthUnit,
  standing: "read" | "guessed",
): string => {
  const between =
    unit === "in"
      ? `${formatLength(least, "0.1 mm").replace(" mm", "")} and ${formatLength(most, "0.1 mm")}`
      : `${formatLength(least, "0.1 mm").replace(" mm", "")} and ${formatLength(most, "0.1 mm").replace(" mm", "")}`;
  return `One layer ${standing === "read" ? "is" : "may be"} worth about ${thinText(layer, unit)}: between ${between}, nine times in ten.`;
};

const countWords = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"] as const;
const counted = (count: number): string => countWords[count] ?? String(count);

const layerWords: { readonly [zone in PieceZone]: string } = {
  round: "# all the way round",
  front: "front #",
  back: "back #",
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
    thinner: "the readings ask for it",
    tape: "the readings ask for it",
  },
  more: {
    thicker: "the readings ask for it",
    thinner: "your batting is thinner than expected",
    tape: "the readings ask for it",
  },
};

/** "Two fewer front layers at the waist: your batting is thicker than expected." */
export function newsSentence(change: PlanChange): string {
  if (change.kind === "same") return learningWords.stands;
  const { kind, layers, zone, level, because } = change;
  const what = layerWords[zone].replace("#", layers === 1 ? "layer" : "layers");
  return sentence(`${counted(layers)} ${kind} ${what} at the ${levelWords[level]}: ${reasons[kind][because]}`);
}

/** The levels as a list: "the waist and the high hip"; all of them are "every level". */
export function levelList(levels: readonly LevelName[], all: number): string {
  if (levels.length === all) return "every level";
  return listed(levels.map((level) => `the ${levelWords[level]}`));
}

export interface RestWords {
  /** The last piece to pin before the rest, or null to read at once. */
  readonly upTo: number | null;
  readonly isLast: boolean;
  readonly levels: string;
}

export function restSentence({ upTo, isLast, levels }: RestWords): string {
  if (upTo === null)
    return isLast ? `Every piece is on: read ${levels} once more.` : `Read ${levels} now, before you pin any more.`;
  if (isLast) return `Pin the rest, up to piece ${upTo}, then read ${levels}.`;
  return `Pin up to piece ${upTo}, then read ${levels}.`;
}

const fits: { readonly [fit in CutUse["fit"]]: string } = {
  asItIs: "as it is",
  trim: "trimmed to the new outline",
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

const halves = { front: "in front", back: "behind" } as const;
export type Half = keyof typeof halves;

export const placeOver = (level: LevelName, half: Half): string => `the ${levelWords[level]} ${halves[half]}`;

export interface CorrectionWords {
  readonly level: LevelName;
  readonly half: Half;
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
  if (told === null) return sentence(`the ${levelWords[level]} may be over ${halves[half]}`);
  const where = told.part === "girth" ? "" : ` ${halves[told.part]}`;
  return sentence(`the ${levelWords[level]} reads ${told.over} over${where}`);
}

export function correctionSentence({ level, half, piece, how }: CorrectionWords): string {
  const name = lower(piece);
  if (how.kind === "peel") return `Take ${name} off again.`;
  if (how.kind === "pullThin")
    return `Pull ${name} thin ${halves[half]} at the ${levelWords[level]} line, a little at a time, and read the tape again.`;
  return `Trim ${name} by ${how.eachSide} on each side at the ${levelWords[level]} line, running out to nothing ${how.reach} above and below it.`;
}

export const doneKinds = ["there", "notYet", "over", "asNearAsItGets"] as const;
export type DoneKind = (typeof doneKinds)[number];

export const doneWords = {
  title: "Is it done?",
  why: (home: string, aim: string): string =>
    `There means within ${home} all round, in front and behind: a tape at home can tell no closer. The plan itself aims at ${aim}.`,
  again: "Read every level again after each step, and once more over the cover.",
  unread: {
    padding: { none: "not read over the padding yet", girthOnly: "front and back not read yet" },
    cover: { none: "not read over the cover yet", girthOnly: "front and back not read over the cover yet" },
  },
  overall: {
    done: "Done: every level is there.",
    doneShort: "Done, as far as padding goes.",
    stopHere: "Every level is there already: you may stop here. The pieces that are left would only refine it.",
    unread: {
      padding: (levels: string): string =>
        `Every level should be there by now, and only the tape can tell: read ${levels}, all round and in front.`,
      cover: (levels: string): string =>
        `Only the tape can tell, over the cover as well: read ${levels}, all round and in front.`,
    },
    pinning: (count: number): string =>
      count === 1 ? "Not yet: one piece is still to be pinned." : `Not yet: ${count} pieces are still to be pinned.`,
    off: (levels: string): string => `Not yet: look at ${levels}.`,
  },
} as const;

const partWords = { girth: "all round", frontArc: "in front", backArc: "behind" } as const;

const doneSentences: { readonly [kind in DoneKind]: (amount: string, part: string) => string } = {
  there: () => "there",
  notYet: (amount, part) => `not yet: ${amount} to go ${part}`,
  over: (amount, part) => `over: ${amount} too much ${part}`,
  asNearAsItGets: (amount, part) => `as near as padding gets: ${amount} off ${part}`,
};

/** What is only expected is never told as if the tape had said it. */
const expectedSentences: { readonly [kind in DoneKind]: (amount: string, part: string) => string } = {
  there: () => "should be there",
  notYet: (amount, part) => `${amount} to go ${part}`,
  over: (amount, part) => `perhaps over: ${amount} too much ${part}`,
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
