import { upperFirst } from "./upperFirst";
/** Words of the padding: what to do next, and how far each stretch of the tape still has to go. */
export const tapePartNames = { girth: "all around", frontArc: "front", backArc: "back" } as const;
export type TapePartName = keyof typeof tapePartNames;

const whereWords: { readonly [part in TapePartName]: string } = {
  girth: "all around",
  frontArc: "in front",
  backArc: "in back",
};

/** How a stretch of the tape stands against the person’s. */
const remainingKinds = ["toGo", "there", "over"] as const;
export type RemainingKind = (typeof remainingKinds)[number];

/** What is behind a figure: a reading over the padding, what is known of the bare form, or only what the plan expects. */
export type Standing = "read" | "bare" | "expected";

/**
 * What is left to go, in words that need no color: the amount is already a length in the person's unit. Only a reading
 * says that it is on target.
 */
export function remainingSentence(kind: RemainingKind, amount: string, part: TapePartName, standing: Standing): string {
  if (kind === "there") return standing === "read" ? "on target" : "should be on target";
  if (kind === "toGo") return `${amount} to go ${whereWords[part]}`;
  return standing === "expected" ? `perhaps ${amount} over: measure it` : `${amount} over ${whereWords[part]}`;
}

export const paddingWords = {
  logFull:
    "The log of this fitting is full, so nothing more can be noted in it. Start a new fitting of the same person to go on.",
  setAside: (count: number): string =>
    count === 1
      ? "One entry of this fitting’s log is not possible, so it is not used. It is kept in the file."
      : `${count} entries of this fitting’s log are not possible, so they are not used. They are kept in the file.`,
  nothing: "On this form the tape already reads as on the person. There is nothing to pin.",
  readings: "What the tape reads",
  wanted: "person",
  reading: (level: string, part: string): string => `${level}, ${part}`,
  about: (length: string): string => `about ${length}`,
  follows: (length: string): string => `works out at ${length}`,
  pad: "Number pad for the measurement",
  keep: "Save the measurement",
  kept: (what: string, length: string, left: string): string => `${upperFirst(what)} ${length}: ${left}.`,
  awake: "Leave the screen on while I pin",
  awakeOn: "The screen stays on.",
  awakeRefused: "This device did not allow it.",
  speak: "Read it aloud",
  overview: "Every level line",
  of: "of",
} as const;
