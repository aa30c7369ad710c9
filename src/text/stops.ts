import type { Step } from "../app/steps/step";
import type { FormFacts } from "../app/steps/formFacts";
import type { StepFacts } from "../app/steps/stepFacts";
import { partOfStep } from "../app/steps/jobPart";
import type { PlannedChange } from "../app/steps/planAnew";
import type { Piece } from "../core/padding/piece";
import { bastedTo, pinningWords, unsaidForm } from "./formKinds";
import { type AfterPaddingName, makingDone, makingHands } from "./makingSteps";
import { layerCount, thePiece } from "./pieces";

/** Words around the one next step: what its button says, what the hands do, and the small ways beside it. */
export const stopWords = {
  region: "The next step",
  route: "Pieces, in the order of pinning",
  preparations: "Before the first piece",
  prepared: { prepare: "the form made ready", lines: "the lines", trial: "the trial" },
  stands: { on: "pinned", now: "now", toCome: "not pinned yet" },
  isDone: "done",
  padded: "The padding is done.",
  paddedNext: (next: string): string => `Next: ${next}`,
  toFinishing: "Go on to finishing",
  coverPinned: "The cover is still pinned: do not move the form before its pins are out and counted.",
  safeStop:
    "A good place to stop for the day: everything is basted, and its pins are out. The form can be moved by its base.",
  minutes: (minutes: number): string => `about ${minutes} min`,
  working: "Working it out…",
  more: "All measurements, and what they show",
  afterwards: (level: string, length: string): string => `Then the ${level} should read about ${length}.`,
  lookedAt: "You are looking at another piece. The next step waits.",
  back: "Back to the next step",
  takeOff: "Take this piece off again",
  takenOff: "Taken off again.",
  stack: { outermost: "outermost", inmost: "on the form" },
  layers: "Layers, from the form outward",
  layer: (number: number, count: number): string =>
    number === count ? `${number}, outermost` : number === 1 ? "1, on the form" : String(number),
} as const;

/** One trail for a piece, one for the tape; the present act is underlined. */
export const pieceTrail = { cut: "Cut", stack: "Stack", pin: "Pin", "carry-lines": "Lines" } as const;
export const tapeTrail = { read: "Measure", tune: "Tune", baste: "Baste", look: "Look" } as const;
export const planTrail = { read: "Measure", "plan-anew": "Update", cut: "Cut" } as const;
export const firstTrail = {
  "prepare-form": "Prepare",
  "mark-lines": "Mark",
  "read-lines": "Measure",
  trial: "Try",
} as const;

/** What the button says; a step without one has its own. */
export function doneWords({ do: name, piece, act, turn }: Step): string {
  switch (name) {
    case "prepare-form":
      return "The form is ready";
    case "mark-lines":
      return "The lines are marked";
    case "read-lines":
      return "Go on to the pieces";
    case "cut":
      return piece?.layers.length === 1 ? "It is cut" : "All layers are cut";
    case "stack":
      return "They are stacked";
    case "pin":
      return piece?.kind === "tuning" ? "It is slipped in" : "It is pinned";
    case "carry-lines":
      return "The lines are carried out";
    case "plan-anew":
      return "Update the remaining pieces";
    case "tune":
      return act?.kind === "takeOut" ? "It is out" : act?.kind === "narrow" ? "It is narrower" : "It is slipped in";
    case "baste":
      return "Basted, pins out and counted";
    case "build-above":
    case "mark-armhole":
      return "It is done";
    case "correct-above":
      return turn?.what === "takeOff" ? "It is off" : "It is on";
    case "look":
      return "I have looked";
    case "done":
      return "All fittings";
    case "read":
    case "read-all":
    case "check":
    case "trial":
      return "";
    default:
      return makingDone[name];
  }
}

export interface HandStep {
  readonly title: string;
  readonly text: string;
}

/** What the hands do, in their order. Common practice, no source. */
export function handSteps(
  { do: name, piece, act }: Step,
  feather: string,
  facts: Pick<StepFacts, "form" | "cloth" | "isReopened"> = unsaidFacts,
): readonly HandStep[] {
  const { form } = facts;
  switch (name) {
    case "cut":
      return [
        { title: "Draw each layer", text: "Mark center line and level lines on it." },
        { title: "Cut it square", text: "Only the outermost edge is feathered, on the form." },
      ];
    case "stack":
      return [
        { title: "Largest outermost", text: "Center on center, level line on level line." },
        { title: "Long stitches", text: "Lying flat; knot both ends, do not pull tight." },
      ];
    case "pin":
      return pinSteps(piece, feather, form);
    case "carry-lines":
      return [
        { title: "Lay the tape", text: "Each line at the height it has on the form." },
        { title: "Running stitch", text: "In a contrast thread: sticky tape does not hold on batting." },
      ];
    case "tune":
      return act?.kind === "takeOut"
        ? [
            { title: "Unpin one side", text: "The outermost layer stays on." },
            { title: "Slip it out", text: "Then smooth and pin again." },
          ]
        : [
            { title: "Unpin one side", text: "Slip it out, or in, under the outermost layer." },
            { title: "Pin again", text: `Center on center. ${feather}` },
          ];
    case "baste":
      return [
        {
          title: "Long stitches",
          text: bastedTo(form),
        },
        { title: "Pins out", text: "One by one, into the dish." },
        { title: "Count them", text: "As many as went in." },
      ];
    case "look":
      return [
        { title: "Front, then left side", text: "Dashed is the person, white the padded form." },
        { title: "Four lengths", text: "Apex height and spacing, back and front waist length." },
      ];
    default:
      return partOfStep[name] === "padding" ? [] : makingHands(name as AfterPaddingName, facts);
  }
}

const unsaidFacts = { form: unsaidForm, cloth: "knit", isReopened: false } as const;

function pinSteps(piece: Piece | null, feather: string, form: FormFacts): readonly HandStep[] {
  if (piece?.kind === "tuning") {
    return [
      { title: "Unpin one side", text: "Slip it under the outermost layer, center on center." },
      { title: "Pin again", text: `Middle first. ${pinningWords(form)} ${feather}` },
    ];
  }
  if (piece?.kind === "cup") {
    return [
      { title: "Slit each disc", text: "To its center, and overlap it until it cups." },
      { title: "Largest against the cup", text: "The bra is on the form already." },
    ];
  }
  return [
    { title: "Middle first", text: "Then the sides, then the edges." },
    { title: "Pins", text: `${pinningWords(form)} Stroke it downward. No pin within 3/4 in of a line.` },
    { title: "Feather", text: feather },
  ];
}

export const bandWords = {
  expected: "is expected here.",
  tolerance: (within: string): string => `Within ${within} is on target.`,
  tap: "Tap what your tape reads.",
  another: "Type another figure",
  nextReading: "What comes next",
  keys: "Back to the tape",
  tape: "Measuring tape",
  less: (than: string): string => `Less than ${than}`,
  between: (from: string, to: string): string => `${from} to ${to}`,
  more: (than: string): string => `More than ${than}`,
  short: { less: "Less:", onTarget: "", more: "More:" },
  make: {
    less: "The next step says what to add.",
    onTarget: "On target. Go on.",
    more: "The next step says what to narrow.",
  },
  said: { less: "less than expected", onTarget: "on target", more: "more than expected" },
  rowsDown: (than: string): string => `${than} and less`,
  rowsUp: (than: string): string => `${than} and more`,
  save: (length: string, next: string | null): string => `Save ${length}${next === null ? "" : `, then ${next}`}`,
  nothingYet: "Type what the tape reads",
  leaveOut: "Leave this one out",
  leaveAllOut: "Leave these measurements out",
  parts: { Girth: "all around", FrontArc: "front", BackArc: "back" },
  saved: (what: string, length: string, band: string): string => `${what} ${length}: ${band}.`,
} as const;

export const trialStop = {
  before: { title: "Measure the waist of the bare form.", next: "wrap the strip" },
  after: {
    title: "Measure the waist over the strip.",
    how: "Three turns of a strip 3 in tall, smooth and not stretched.",
  },
  what: { before: "Waist, bare", after: "Waist, over the strip" },
  saveLast: (length: string): string => `Save ${length}, strip off again`,
  skip: "Skip the trial",
  noMore: "After is not more than before. Were the two switched?",
} as const;

export const tuneWays = { leave: "Leave it: tune no more", ignore: "Ignore this reading" } as const;

export const checkStop = {
  read: (length: string): string => `You typed ${length}.`,
  can: (least: string, most: string): string => `With these pieces on, the tape can read ${least} to ${most}.`,
  should: (expected: string): string => `Over these pieces the tape should read about ${expected}.`,
  ignore: "Ignore this reading",
  which: "Which one is correct?",
  first: "first",
  second: "second",
  keep: (length: string): string => `${length} is correct`,
  choose: "Choose the correct one",
  again: "Measure once more",
} as const;

/** Wherever pins are taken out and counted. */
export const pinsOutStop = {
  pins: "Pins taken out",
  done: (what: string, count: number): string => `${what}, ${count} ${count === 1 ? "pin" : "pins"} out`,
  missing: "One is missing",
  missingTitle: "One pin is missing: stop.",
  missingHow: [
    "Do not move or press the form. Look over the floor around it.",
    "Run a magnet over the padding, seam by seam.",
    "Press gently over each place. Go on only when the count agrees.",
  ],
  found: "It is found",
} as const;

const fates: { readonly [fate in PlannedChange["fate"]]: string } = {
  stays: "stays as it is",
  changes: "changes",
  isNew: "new",
  isGone: "not needed any more",
};

export const changeWords = ({ piece, fate }: PlannedChange): readonly [name: string, fate: string] => [
  thePiece(piece),
  fate === "isGone" || fate === "stays" ? fates[fate] : `${fates[fate]}: ${layerCount(piece.layers.length)}`,
];

export const planAnewStop = {
  pinned: (count: number): string =>
    count === 0
      ? "Nothing is pinned yet."
      : count === 1
        ? "The one pinned piece stays."
        : `The ${count} pinned pieces stay.`,
  list: "The remaining pieces",
  none: "No piece is left to pin.",
} as const;
