import type { MeasurementName } from "../../core/body/vocabulary";

/** Words of the place where the plan lies. */
export const planningWords = {
  title: "The plan",
  waitingTitle: "There is no plan yet",
  waitingFor: (labels: readonly string[]): string =>
    `It needs ${listed(labels)}. Everything else can be guessed for now.`,
  waitingForm: "The form is not described yet: choose a size table, or measure the form itself.",
  contradiction: "Some readings cannot both be right, so there is nothing to plan from yet.",
  noBatting: "One layer of the batting is given as no layer can be, so there is nothing to plan with yet.",
  measureThem: "Go and measure",
  describeForm: "Describe the form",
  summary: (pieces: string, place: string): string => `${pieces}, most of it ${place}.`,
  pieces: (count: number): string => (count === 1 ? "One piece of batting" : `${count} pieces of batting`),
  nothing: "By what is known so far this form should read what the body reads: there is nothing to add.",
  deepest: { front: "in front", back: "behind", around: "all round" },
  mostAt: (level: string, where: string): string => `at the ${level}, ${where}`,
  agreement: (length: string, holds: string): string =>
    `When the last one is pinned, the tape should read this body’s own figures at every level, within ${length}, ${holds}.`,
  agreementBut: (length: string, holds: string): string =>
    `When the last one is pinned, the tape should read this body’s own figures within ${length}, ${holds}, except where it says so below.`,
  holds: {
    guessesAndBatting: "if the guesses and the batting hold",
    batting: "if the batting holds",
  },
  guesses: (count: number): string =>
    count === 1
      ? "One reading is guessed and drawn dashed."
      : `${count} readings are guessed and drawn dashed; each one measured makes the plan more this body’s own.`,
  weightiest: (whose: "body" | "form", label: string, spread: string): string =>
    `The guess that weighs most is the ${label}${whose === "form" ? " of the form" : ""}: it may be out by ${spread} either way.`,
  measureIt: "Measure it",
  whichForm: (size: string): string =>
    `Which form have you got? Size ${size} is only supposed, because it would suit this body.`,
  sayWhichForm: "Say which form it is",
  beforeCutting: "Before you cut",
  shopping: "What to have ready",
  largest: (size: string): string => `The largest is ${size}.`,
  everythingElse: "Pins, cover, tape: all it takes",
  cannot: "What padding cannot do",
  otherForm: "Look at other sizes",
  seams: "Where to mark the side seams",
  where: "Where it goes",
  levels: "Level by level",
  level: "Level",
  pieceList: "Pieces, in the order of pinning",
  toPadding: "Start padding",
  toPrint: "Put it on paper",
  tableHead: { reading: "", body: "body", form: "form now", add: "to add", after: "after" },
  formSupposed: "form now (supposed)",
  /** A form from a table: nobody laid a tape round it. */
  supposed: "supposed",
  atBodyHeight: (off: string, isBelow: boolean, level: string): string =>
    `The form at this body’s height: ${off} ${isBelow ? "below" : "above"} the form’s own ${level}.`,
  sides: (levels: string): string =>
    `At the ${levels} nobody measured the breadth: how far the body reaches to the sides is a guess there, and the batting may end inside its line or beyond it. The tape reads right all the same.`,
  measureBreadth: "Measure a breadth",
  rows: { girth: "all round", frontArc: "front", backArc: "back", drop: "below the nape" },
  guessed: "guessed",
  figure: { front: "Front", back: "Back", side: "Side" },
  showPiece: (order: number): string => `Show piece ${order} on the figure`,
  allPieces: "All pieces",
} as const;

export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1) ?? ""}`;

export type MissingName = Extract<MeasurementName, "bustGirth" | "waistGirth" | "fullHipGirth">;
