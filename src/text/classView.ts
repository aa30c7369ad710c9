import { upperFirst } from "./upperFirst";
import type { LevelName } from "../core/body/vocabulary";
import type { LengthUnit } from "../core/lengthText";
import { levelWords } from "./pictures";
import type { StepName } from "../app/steps/step";
import type { TapePartName } from "./padding";

/** Words of the view for a class: few, short and read from the back row. */
export const classWords = {
  title: "Class view",
  wearersSide: "Left and right are the wearer’s.",
  step: (place: number, all: number): string => `Step ${place} of ${all}`,
  facts: {
    layers: "Layers",
    edge: "Edge",
    darts: "Darts",
    dartCount: (count: number): string => `${String(count)} at each line or edge that has them`,
    dartSize: (wide: string, deep: string): string => `${wide} × ${deep}`,
    /** Of one layer; at a line a dart runs out above it and below. The count is told once where it is the same everywhere. */
    dartsAt: (
      count: number | null,
      places: readonly { readonly from: LevelName | "top" | "bottom"; readonly count: number; readonly size: string }[],
    ): string =>
      `${count === null ? "Darts" : `${String(count)} darts`}: ${places
        .map((place) => {
          const isEnd = place.from === "top" || place.from === "bottom";
          const where =
            place.from === "top" ? "top edge" : place.from === "bottom" ? "lower edge" : levelWords[place.from];
          return `${where} ${count === null ? `${String(place.count)} of ` : ""}${place.size}${isEnd ? "" : " each way"}`;
        })
        .join("; ")}.`,
    featherCovered: "feather the edges",
    onlyLayer: "The one layer",
    layer: (number: number, isOutermost: boolean): string =>
      isOutermost ? `Layer ${String(number)}, the outermost` : `Layer ${String(number)}`,
  },
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
  overCover: "over the cover",
  guessed: "estimated",
  covered: "covered",
  figuresCovered: "The figures are covered.",
  /** Of a step whose act cannot be said without a figure of the person. */
  checkCovered: "Measure once more.",
  tuneCovered: "Tune the padding.",
  figuresShown: "The figures are shown.",
  parts: { girth: "around", frontArc: "front", backArc: "back" } satisfies {
    readonly [part in TapePartName]: string;
  },
  /** Whose figures are shown: by the label of the fitting, which may be empty. */
  whose: (name: string, isCovered: boolean): string =>
    [name, isCovered ? "figures covered" : ""].filter((words) => words !== "").join(", "),
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
  own: "The open fitting",
  coverPerson: "Cover the person",
  coverForm: "Cover the form",
  unit: { in: "In cm", cm: "In inches", mm: "In inches" } satisfies { readonly [unit in LengthUnit]: string },
  fullScreen: "Full screen",
  leaveFullScreen: "Leave full screen",
  session: "Session plan",
  note: "Note",
  keys: "All keys",
  closeKeys: "Close",
  keysHint: "all keys",
  leave: "Leave",
  levels: "Level line shown",
  follow: "By the piece",
} as const;

/** The keys, as they are printed on a keyboard or a clicker, and what each does. */
export const keyHelp: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: "→ ↓ Space Page Down", does: "next step (the clicker’s forward button)" },
  { keys: "← ↑ Shift+Space Page Up", does: "previous step (the clicker’s back button)" },
  { keys: "Home / End", does: "the first step / the last step" },
  { keys: "C, B or period", does: "cover or show every figure and the outline (the clicker’s blank button)" },
  { keys: "X / Z", does: "cover or show the person alone, outline and all / the form’s figures alone" },
  { keys: "Enter", does: "type what the class reads, at a step that measures" },
  { keys: "M", does: "a sample person at the same step; again: another one" },
  { keys: "O", does: "back to the fitting that is open; a person who was measured comes covered" },
  { keys: "1 to 5", does: "stay at one level line, from the bust down" },
  { keys: "0", does: "the level line that the piece changes most" },
  { keys: "U", does: "inches or centimeters" },
  { keys: "F", does: "full screen" },
  { keys: "S", does: "the session plan: what fits into this class, and the minutes of each step" },
  { keys: "N", does: "the note to the step, with the way to where notes are typed" },
  { keys: "P", does: "start or pause the timer of the step" },
  { keys: "R", does: "a phone as remote, where the tool was started with --share" },
  { keys: "K", does: "this list" },
];

export const keyHelpWords = {
  title: "Keys and clicker",
  letters: "Letter and number keys work",
  private: "Nothing you do here changes a fitting.",
} as const;

/** What the class reads off the tape and somebody types at its step. */
export const typedWords = {
  title: "Type what the class reads:",
  key: "Enter",
  kept: "Shown here only; it goes into no fitting.",
  covered: "The figures are covered: show them (C), then type what the class reads.",
  layer: (length: string): string => `One layer adds about ${length} in thickness.`,
  planCounts: (length: string): string => `The plan counts on ${length}.`,
  doubts: {
    lessThanBare: "That is less than the bare form reads, and padding only adds. Measure once more.",
    frontIsMore: "The front is not less than all around. Measure both once more.",
    wrappedIsLess: "The strip adds nothing by these two. Measure both once more.",
  },
} as const;

/** In front of the field. */
export function typedLabel(name: string): string {
  if (name === "trialBare") return "without the strip";
  if (name === "trialWrapped") return "over the strip";
  if (name.endsWith("FrontArc")) return "front";
  if (name.endsWith("BackArc")) return "back";
  return name.endsWith("Breadth") ? "width" : "around";
}

export const sessionWords = {
  title: "In this session",
  lasts: "How long the class lasts",
  /** A length of the class, on its button. */
  length: (minutes: number): string =>
    minutes >= 720 ? "Two days" : minutes >= 360 ? "A day of 6 h" : durationText(minutes),
  day: (day: number, duration: string): string => `Day ${String(day)}, about ${duration}`,
  sum: (duration: string): string => `About ${duration} for one pair of hands. Then no pin holds a piece: stop there.`,
  next: (duration: string): string => `The next place to stop is about ${duration} from now: too far for this class.`,
  longer: (duration: string): string =>
    `The next place to stop is about ${duration} away: pins stay in the form until then. Let nobody lean on it, and leave a note.`,
  total: (duration: string): string => `All that is left takes about ${duration}; measuring the person is not in it.`,
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
  title: (level: string, where: string): string => `${upperFirst(level)} seen from above, ${where}`,
  bare: "the bare form",
  after: (order: number): string => `after piece ${order}`,
  /** With the person covered the outline is not drawn. */
  descriptionCovered: (count: number): string =>
    `The form in the middle, ${count === 0 ? "no batting" : count === 1 ? "one layer of batting" : `${count} layers of batting`} around it.`,
  description: (count: number): string =>
    `The form in the middle, ${count === 0 ? "no batting" : count === 1 ? "one layer of batting" : `${count} layers of batting`} around it, and the person’s outline as a chalk line; the tint between them is what is still to fill.`,
} as const;
