import type { LevelName } from "../../core/body/vocabulary";
import type { LengthUnit } from "../../core/lengthText";
import type { TapePartName } from "./padding";

/** Words of the view for the wall of a classroom: few, short and read from the back row. */
export const wallWords = {
  title: "On the wall",
  bareForm: "The bare form",
  /** While the figures are covered the heights of the lines are covered too. */
  bareHintCovered:
    "Five level lines are marked on the form, at the body’s own heights. The bra goes on before the cups.",
  braHint: "The bra goes on before the cups.",
  wearersSide: "Left and right are the wearer’s.",
  allOn: "Every piece is on",
  piece: (order: number, all: number): string => `Piece ${order} of ${all}`,
  wanted: "wanted",
  afterBare: "bare form",
  after: (order: number): string => `after piece ${order}`,
  left: "left to go",
  inUnit: { in: "in inches", cm: "in centimetres", mm: "in millimetres" } satisfies {
    readonly [unit in LengthUnit]: string;
  },
  there: "there",
  shouldBeThere: "should be there",
  over: "over",
  guessed: "guessed",
  covered: "covered",
  figuresCovered: "The figures are covered.",
  figuresShown: "The figures are shown.",
  parts: { girth: "all round", frontArc: "front", backArc: "back" } satisfies {
    readonly [part in TapePartName]: string;
  },
  own: "Your own fitting",
  ownCovered: "Your own fitting, its figures covered",
  madeUp: (name: string): string => `${name}, made up`,
  nothing: "This form already reads what the body reads. There is nothing to pin.",
  picture: "The section",
  figures: "What the tape reads",
  controls: "Controls",
} as const;

export const wallControls = {
  back: "Back",
  forward: "Forward",
  cover: "Cover the figures",
  uncover: "Show the figures",
  madeUp: "Made-up person",
  nextMadeUp: "Another person",
  own: "Own fitting",
  unit: { in: "In cm", cm: "In inches", mm: "In inches" } satisfies { readonly [unit in LengthUnit]: string },
  fullScreen: "Full screen",
  leaveFullScreen: "Small screen",
  keys: "All keys",
  closeKeys: "Close",
  leave: "Leave",
  levels: "Level shown",
  follow: "By the piece",
} as const;

/** The keys, as they are printed on a keyboard or a clicker, and what each does. */
export const keyHelp: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: "→ ↓ Space Page Down", does: "one piece on (the clicker’s forward button)" },
  { keys: "← ↑ Shift+Space Page Up", does: "one piece back (the clicker’s back button)" },
  { keys: "Home / End", does: "the bare form / every piece on" },
  { keys: "C, B or full stop", does: "cover or show every figure of the body (the clicker’s blank button)" },
  { keys: "M", does: "a made-up person; again: another one" },
  { keys: "O", does: "your own fitting, covered" },
  { keys: "1 to 5", does: "stay at one level, from the bust down" },
  { keys: "0", does: "the level that the piece changes most" },
  { keys: "U", does: "inches or centimetres" },
  { keys: "F", does: "full screen" },
  { keys: "K", does: "this list" },
];

export const keyHelpWords = {
  title: "Keys and clicker",
  letters: "Letter and number keys work",
  private: "Nothing you do here changes a fitting.",
} as const;

/** What a screen reader hears after a step. */
export const wallSentence = (where: string, level: string, parts: readonly string[]): string =>
  parts.length === 0 ? `${where}. ${capital(level)}.` : `${where}. ${capital(level)}: ${parts.join(", ")}.`;

export const wallPicture = {
  /** Above LEFT and RIGHT at the corners of the section. */
  wearers: "WEARER’S",
  title: (level: string, where: string): string => `${capital(level)} seen from above, ${where}`,
  bare: "the bare form",
  after: (order: number): string => `after piece ${order}`,
  description: (count: number): string =>
    `The form in the middle, ${count === 0 ? "no batting" : count === 1 ? "one layer of batting" : `${count} layers of batting`} round it, and the body as a chalk line; the tint between them is what is still to fill.`,
} as const;

export const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

export type WallLevel = LevelName | "follow";
