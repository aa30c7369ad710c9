import { shortCautions } from "./cautions";
import { type TapePartName, tapePartNames } from "./padding";
import { layerCount } from "./pieces";

/** Words on paper, and of the place where it is printed from. */
export const printingWords = {
  title: "Print",
  lead: "One or two pages to work from, and the cut drawings beside it: everything needed with the power off. Letter or A4, black and white.",
  waiting: "There is no plan yet, so there is nothing to pad by. The blank measuring sheet can be printed now.",
  toReadings: "Go to measuring",
  print: "Print",
  which: "Which sheets",
  nameless: "Without the name: no page says whose it is",
  sheets: {
    lines: {
      name: "Level lines on the form",
      buys: "Where each of the person’s lines goes, and room for what the bare form measures there.",
    },
    padding: { name: "The padding sheet", buys: "The figure, pieces, places, measurements, room to write." },
    smallCutting: { name: "Small cut drawings", buys: "Every piece with its sizes, about eight to a page." },
    measuring: {
      name: "A blank measuring sheet",
      buys: "A drawing and room for every measurement, the needed ones first.",
    },
    cutting: { name: "Cut drawings", buys: "Larger, with where each piece goes, and a test square." },
  },
  needsPlan: "needs a plan",
  noneChosen: "Choose a sheet to see it here as it prints.",
  sheetTitle: (name: string): string => (name === "" ? "Padding sheet" : `Padding sheet for ${name}`),
  batting: (batting: string): string => `Batting: ${batting}.`,
  finishing: (batting: string): string => `To finish: ${batting}.`,
  /** What the plan counts a layer as, and whether it comes from the tape. */
  worth: (layer: string, readings: number): string =>
    readings === 0
      ? `One layer may add about ${layer} under the tape, a starting figure.`
      : `One layer adds about ${layer} under the tape, from ${readings === 1 ? "one measurement" : `${readings} measurements`}.`,
  unused: "None of it is needed.",
  measurements: "Measurements",
  measureHead: {
    level: "Level line",
    down: "below the nape",
    body: "Person",
    form: "Bare form",
    padded: "Padded, as read",
    girth: "around",
    front: "front",
    back: "back",
  },
  guessNote: "≈ stands before an estimate: measure it if you can.",
  pieces: "Pieces, in the order of pinning",
  pieceHead: { done: "", piece: "Piece", cut: "Cut", tape: "Tape should read", read: "It reads" },
  tapeReads: (level: string, girth: string, front: string): string => `${level} ${girth}, front ${front}`,
  before: "Before the first piece",
  draft: (note: string): string =>
    `${note} Mark the lines and measure the bare form first: the sheet of the level lines says how.`,
  draftBegun: (note: string): string => `${note} Measure each line after every piece: that makes up for it.`,
  trial:
    "Wrap one layer around the bare waist and measure before and after: what the tape gains, divided by 6.3, is how much one layer adds.",
  isPinned: "pinned",
  /** `waist 32 1/4, front 17 1/4`: in the unit of the sheet. */
  readAt: (level: string, parts: readonly (readonly [part: TapePartName, length: string])[]): string =>
    `${level} ${parts.map(([part, length]) => (part === "girth" ? length : `${tapePartNames[part]} ${length}`)).join(", ")}`,
  continued: "continued",
  overleaf: "Continued on the next page.",
  limits: "What padding cannot do, and the side seams",
  pinsIn: "Pins in",
  pinsOut: "pins out",
  after:
    "After each piece measure that line again, and leave it: the next pieces make it good. After the last one: narrow the last panel where the padding is over, pin one more thin layer where it is short.",
  none: "There is nothing to pin: on this form the tape already reads as on the person.",
} as const;

/** Words of the blank measuring sheet. */
export const measuringSheetWords = {
  title: "Measuring sheet",
  blanks: ["For", "Date", "Unit", "Measured by"],
  how: "If a bra will be worn, it is on. Tie a narrow elastic at the waist. The tape is snug when it stays up by itself and a finger still slides under it. Left and right are the wearer’s.",
  form: "On the bare form lay the tape the same way.",
  body: "Person",
  onForm: "Form",
} as const;

/** Words of the sheets of cut drawings. */
export const cuttingSheetWords = {
  title: (name: string): string => (name === "" ? "Cut drawings" : `Cut drawings for ${name}`),
  small: (name: string): string => (name === "" ? "Small cut drawings" : `Small cut drawings for ${name}`),
  howMany: (layers: number, batting: string | null): string =>
    `Cut ${layerCount(layers)}${batting === null ? "" : ` from ${batting}`}.`,
  square: (length: string): string =>
    `Print at 100 %. If the square does not measure ${length} each way, this printer changes sizes.`,
  how: [
    "The drawings are smaller than true size: mark every width at its distance below the top edge, evenly to both sides of the center line unless both are written, join the marks, and cut.",
    "The outer side faces you, the top edge is up, and the wearer’s left is on the right.",
    "Short strokes mark the edge to feather: pull fibers away with the fingers, never cut it thin with a blade.",
    shortCautions("cutting"),
  ],
} as const;
