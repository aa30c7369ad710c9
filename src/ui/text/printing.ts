import { type TapePartName, tapePartNames } from "./padding";

/** Words on paper, and of the place where it is printed from. */
export const printingWords = {
  title: "On paper",
  lead: "One page for the wall, and the cut drawings beside it: everything needed with the power off. Letter or A4, black and white.",
  waiting: "There is no plan yet, so there is nothing to pad by. The blank measuring sheet can be printed now.",
  toReadings: "Go and measure",
  print: "Print it",
  which: "Which sheets",
  sheets: {
    padding: { name: "The padding sheet", buys: "The figure, pieces, places, readings, room to write." },
    smallCutting: { name: "Small cut drawings", buys: "Every piece with its sizes, about eight to a page." },
    measuring: {
      name: "A blank measuring sheet",
      buys: "A drawing and room for every reading, the needed ones first.",
    },
    cutting: { name: "Cut drawings", buys: "Larger, with where each piece goes, and a test square." },
  },
  needsPlan: "needs a plan",
  noneChosen: "Choose a sheet, and it lies here as it will on paper.",
  sheetTitle: (name: string): string => (name === "" ? "Padding sheet" : `Padding sheet for ${name}`),
  batting: (batting: string): string => `Batting: ${batting}.`,
  finishing: (batting: string): string => `To finish: ${batting}.`,
  /** What the plan counts a layer as, and whether anybody has asked the tape. */
  worth: (layer: string, readings: number): string =>
    readings === 0
      ? `One layer is guessed to be worth ${layer}.`
      : `One layer is worth about ${layer}, learned from ${readings === 1 ? "one reading" : `${readings} readings`}.`,
  unused: "None of it is needed.",
  measurements: "What the tape says",
  measureHead: {
    level: "Level",
    down: "below the nape",
    body: "Body",
    form: "Bare form",
    padded: "Padded, as read",
    girth: "round",
    front: "front",
    back: "back",
  },
  guessNote: "≈ stands before a guess: measure it if you can.",
  pieces: "Pieces, in the order of pinning",
  pieceHead: { done: "", piece: "Piece", cut: "Cut", tape: "Tape should read", read: "It reads" },
  tapeReads: (level: string, girth: string, front: string): string => `${level} ${girth}, front ${front}`,
  before: "Before the first piece",
  careFirst: "Count the pins in. Wear a dust mask. Cut away from the hand. Weight the stand.",
  trial:
    "Wrap one layer round the bare waist and read it before and after: an even layer adds about six times its worth.",
  isPinned: "pinned",
  /** `waist 32 1/4, front 17 1/4`: in the unit of the sheet. */
  readAt: (level: string, parts: readonly (readonly [part: TapePartName, length: string])[]): string =>
    `${level} ${parts.map(([part, length]) => (part === "girth" ? length : `${tapePartNames[part]} ${length}`)).join(", ")}`,
  continued: "continued",
  overleaf: "Continued on the next page.",
  limits: "What padding cannot do, and the side seams",
  care: "No pins between the lips. The padded form is top-heavy: weight its stand.",
  pinsIn: "Pins in",
  pinsOut: "out",
  after:
    "After each piece measure that level again. Over the mark: ease or peel the last layer. Short of it: go on, or add a thin piece.",
  none: "There is nothing to pin: this form already reads what the body reads.",
} as const;

/** Words of the blank measuring sheet. */
export const measuringSheetWords = {
  title: "Measuring sheet",
  blanks: ["For", "Date", "Read in", "Measured by"],
  how: "Wear the bra that will be worn. Tie a tape at the waist. The tape is snug when it stays up by itself and a finger still slides under it. Left and right are the wearer’s.",
  form: "On the form lay the tape along the same way, on the bare form.",
  careful: "No pins between the lips: count them into a dish, and count them back.",
  body: "Body",
  onForm: "Form",
} as const;

/** Words of the sheets of cut drawings. */
export const cuttingSheetWords = {
  title: (name: string): string => (name === "" ? "Cut drawings" : `Cut drawings for ${name}`),
  small: (name: string): string => (name === "" ? "Small cut drawings" : `Small cut drawings for ${name}`),
  howMany: (plies: number, batting: string | null): string =>
    `${plies === 1 ? "Cut one" : `Cut ${plies} alike`}${batting === null ? "" : ` from ${batting}`}.`,
  square: (length: string): string =>
    `Print at 100 %. If the square does not measure ${length} each way, this printer changes sizes.`,
  how: [
    "The drawings are smaller than life: mark every width at its distance below the top edge, evenly to both sides of the centre line unless both are written, join the marks, and cut.",
    "The outer side faces you, the top edge is up, and the wearer’s left is on the right.",
    "Short strokes mark the edge that is pulled thin, with the fingers and never with a blade.",
    "Cut away from the hand, and wear a dust mask.",
  ],
} as const;
