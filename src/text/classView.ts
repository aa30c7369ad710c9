import type { LengthUnit } from "../core/lengthText";
import type { StepName } from "../app/steps/step";
import type { TapePartName } from "./padding";

/** Words of the view for a class: few, short and read from the back row. */
export const classWords = {
  title: "Class view",
  wearersSide: "Left and right are the wearer’s.",
  step: (place: number, all: number): string => `Step ${place} of ${all}`,
  facts: { layers: "Layers", cut: "Cut the outermost", place: "Place", edge: "Edge" },
  form: "The form",
  shouldRead: (level: string, isNow: boolean): string => `${isNow ? "The" : "Then the"} ${level} should read`,
  tolerance: (length: string): string => `${length} more or less is on target.`,
  comesNext: "Next:",
  wanted: "person",
  afterBare: "bare form",
  after: (order: number): string => `after piece ${order}`,
  left: "left to go",
  inUnit: { in: "in inches", cm: "in centimeters", mm: "in millimeters" } satisfies {
    readonly [unit in LengthUnit]: string;
  },
  there: "on target",
  shouldBeThere: "should be on target",
  over: "over",
  guessed: "estimated",
  covered: "covered",
  figuresCovered: "The figures are covered.",
  figuresShown: "The figures are shown.",
  parts: { girth: "around", frontArc: "front", backArc: "back" } satisfies {
    readonly [part in TapePartName]: string;
  },
  own: "Your own fitting",
  ownCovered: "Your own fitting, its figures covered",
  madeUp: (name: string): string => (name.endsWith("(sample person)") ? name : `${name} (sample person)`),
  picture: "The section",
  linesPicture: "The lines on the form",
  figures: "What the tape reads",
  controls: "Controls",
} as const;

export const classControls = {
  back: "Previous step",
  forward: "Next step",
  cover: "Cover the figures",
  uncover: "Show the figures",
  madeUp: "Sample person",
  nextMadeUp: "Another person",
  own: "Own fitting",
  unit: { in: "In cm", cm: "In inches", mm: "In inches" } satisfies { readonly [unit in LengthUnit]: string },
  fullScreen: "Full screen",
  leaveFullScreen: "Leave full screen",
  session: "Session plan",
  note: "Note",
  keys: "All keys",
  closeKeys: "Close",
  leave: "Leave",
  levels: "Level line shown",
  follow: "By the piece",
} as const;

/** The keys, as they are printed on a keyboard or a clicker, and what each does. */
export const keyHelp: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: "→ ↓ Space Page Down", does: "next step (the clicker’s forward button)" },
  { keys: "← ↑ Shift+Space Page Up", does: "previous step (the clicker’s back button)" },
  { keys: "Home / End", does: "the first step / the last step" },
  { keys: "C, B or period", does: "cover or show every figure of the person (the clicker’s blank button)" },
  { keys: "M", does: "a sample person; again: another one" },
  { keys: "O", does: "your own fitting, covered" },
  { keys: "1 to 5", does: "stay at one level line, from the bust down" },
  { keys: "0", does: "the level line that the piece changes most" },
  { keys: "U", does: "inches or centimeters" },
  { keys: "F", does: "full screen" },
  { keys: "S", does: "the session plan: what fits into this class, and the minutes of each step" },
  { keys: "N", does: "your own note to the step, typed under Print" },
  { keys: "P", does: "start or pause the timer of the step" },
  { keys: "R", does: "a phone as remote, where the tool was started with --share" },
  { keys: "K", does: "this list" },
];

export const keyHelpWords = {
  title: "Keys and clicker",
  letters: "Letter and number keys work",
  private: "Nothing you do here changes a fitting.",
} as const;

export const sessionWords = {
  title: "In this session",
  lasts: "How long the class lasts",
  sum: (duration: string): string =>
    `About ${duration} for one pair of hands. Then no pin is left in the form: stop there.`,
  longer: (duration: string): string =>
    `The next place to stop is about ${duration} away: pins stay in the form until then. Let nobody lean on it, and leave a note.`,
  nothing: "Nothing is left to do.",
  start: "Start the timer",
  pause: "Pause the timer",
  timer: (clock: string, duration: string): string => `${clock} of about ${duration}`,
} as const;

/** What is done with one piece, behind its name. */
export const sessionActs: { readonly [name in StepName]?: string } = {
  cut: "cut",
  stack: "stack",
  pin: "pin",
  tune: "tune",
  "carry-lines": "carry the lines out",
};

/** `8 min`, `1 h 14 min`. */
export function durationText(minutes: number): string {
  const [hours, rest] = [Math.floor(minutes / 60), Math.round(minutes % 60)];
  return [...(hours === 0 ? [] : [`${hours} h`]), ...(rest === 0 && hours > 0 ? [] : [`${rest} min`])].join(" ");
}

/** `0:07`, `12:30`, `65:00`: minutes and seconds. */
export const clockText = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;

export const classPicture = {
  /** Above LEFT and RIGHT at the corners of the section. */
  wearers: "WEARER’S",
  title: (level: string, where: string): string => `${capital(level)} seen from above, ${where}`,
  bare: "the bare form",
  after: (order: number): string => `after piece ${order}`,
  description: (count: number): string =>
    `The form in the middle, ${count === 0 ? "no batting" : count === 1 ? "one layer of batting" : `${count} layers of batting`} around it, and the person’s outline as a chalk line; the tint between them is what is still to fill.`,
} as const;

export const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
