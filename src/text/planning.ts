/** Words of the place where the plan lies. */
export const planningWords = {
  title: "The plan",
  waitingTitle: "There is no plan yet",
  waitingFor: (labels: readonly string[]): string =>
    `It needs ${listed(labels)}. Everything else is estimated for now.`,
  waitingForm: "The form is not described yet: choose a size chart, or measure the form itself.",
  contradiction: "Some measurements cannot both be right, so there is nothing to plan from yet.",
  noBatting: "The thickness given for one layer of batting cannot be right. Check its unit; then there is a plan.",
  measureThem: "Go and measure",
  describeForm: "Describe the form",
  pieces: (count: number, shapes: number): string =>
    `${count === 1 ? "One piece of batting" : `${count} pieces of batting`}, ${shapes === 1 ? "one shape" : `${shapes} shapes`} to cut.`,
  nothing: "As far as is known, the tape reads on this form as on the person: there is nothing to add.",
  nothingShort: "Padding cannot bring the tape on this form to the person’s figures: there is nothing to pin on it.",
  agreement: (length: string, holds: string): string =>
    `When the last one is pinned, the tape should read the person’s own figures at every level line, within ${length}, ${holds}.`,
  agreementBut: (length: string, holds: string): string =>
    `When the last one is pinned, the tape should read the person’s own figures within ${length}, ${holds}, except where noted under “What padding cannot do”.`,
  holds: {
    guessesAndBatting: "if the estimates and the thickness of a layer are close",
    batting: "if the thickness of a layer is close",
  },
  guesses: (count: number): string =>
    count === 1
      ? "One measurement is estimated and drawn dashed."
      : `${count} measurements are estimated and drawn dashed; each one you take makes the plan more the person’s own.`,
  whichForm: (size: string): string =>
    `Which form do you have? Size ${size} is only an estimate, because padding can fill it.`,
  sayWhichForm: "Say which form it is",
  beforeCutting: "Before you cut",
  shopping: "What to have ready",
  largest: (size: string): string => `The largest is ${size}.`,
  everythingElse: "Pins, thread, waist tape: the whole list",
  cannot: "What padding cannot do",
  otherForm: "Look at other sizes",
  seams: "Where to mark the side seams",
  levels: "Line by line",
  level: "Level line",
  pieceList: "Pieces, in the order of pinning",
  toPadding: "Start padding",
  goOnPadding: "Go on padding",
  toPrint: "Print it",
  tableHead: { reading: "", body: "person", form: "form now", add: "to add", after: "after" },
  formSupposed: "form now (estimated)",
  atBodyHeight: (off: string, isBelow: boolean, level: string): string =>
    `The form at the person’s height: ${off} ${isBelow ? "below" : "above"} the form’s own ${level}.`,
  sides: (levels: string): string =>
    `At the ${levels} the width straight across is estimated, so the batting may end inside the dashed line or beyond it. The tape reads on target all the same.`,
  measureBreadth: "Measure a width straight across",
  rows: { girth: "all around", frontArc: "front", backArc: "back", depthBelowNape: "below the nape" },
  guessed: "estimated",
  larger: "Larger drawing",
  backToPlan: "Back to the plan",
  chooseLevel: "Which level line is shown",
} as const;

export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1) ?? ""}`;
