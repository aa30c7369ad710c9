/** Words of the padding: what to do next, and how far each stretch of the tape still has to go. */
export const tapePartNames = { girth: "all round", frontArc: "front", backArc: "back" } as const;
export type TapePartName = keyof typeof tapePartNames;

const whereWords: { readonly [part in TapePartName]: string } = {
  girth: "all round",
  frontArc: "in front",
  backArc: "behind",
};

/** How a stretch of the tape stands against what is wanted. */
export const remainingKinds = ["toGo", "there", "over"] as const;
export type RemainingKind = (typeof remainingKinds)[number];

/** What is left to go, in words that need no colour: the amount is already a length in the person's unit. */
export const remainingSentence = (
  kind: RemainingKind,
  amount: string,
  part: TapePartName,
  isLastLayerOn: boolean,
): string => {
  if (kind === "there") return "there";
  if (kind === "toGo") return `${amount} to go ${whereWords[part]}`;
  return isLastLayerOn ? `${amount} over: ease the last layer` : `${amount} over ${whereWords[part]}`;
};

/** The same for a whole line of words about one level. */
export const levelSentence = (level: string, parts: readonly string[]): string => `${level}: ${parts.join(", ")}.`;

export const paddingWords = {
  title: "Padding",
  next: "Now",
  andThen: "Then",
  pinned: "It is pinned",
  unpin: "Take this piece off again",
  unpinned: "Taken off again.",
  pinnedAnnounced: (order: number, all: number): string => `Piece ${order} of ${all} is pinned.`,
  back: "Earlier piece",
  forward: "Later piece",
  measureThen: (level: string, length: string): string => `Then measure the ${level}: about ${length}.`,
  measureFrontThen: (length: string): string => `Its front, side seam to side seam: about ${length}.`,
  doneTitle: "Every piece is on",
  done: "Measure each level once more. Where the tape says there, it is done.",
  toFinishing: "Go on to finishing",
  nothing: "This form already reads what the body reads. There is nothing to pin.",
  careTitle: "Before you begin",
  care: [
    "Count the pins into the dish, and count them back at the end. Never hold pins between the lips.",
    "Batting sheds fibres: wear a dust mask, and keep the room aired.",
    "A padded form is top-heavy: widen or weight the stand before the padding grows.",
  ],
  readings: "What the tape reads",
  levelTabs: "Level to measure",
  wanted: "wanted",
  now: "now",
  left: "left to go",
  reading: (level: string, part: string): string => `${level}, ${part}`,
  about: (length: string): string => `about ${length}`,
  follows: (length: string): string => `so ${length}`,
  pinRow: "Pieces, in the order of pinning",
  pad: "Number pad for the reading",
  padInto: "Into:",
  keep: "Keep the reading",
  awake: "Keep the screen awake",
  awakeOn: "The screen stays awake.",
  awakeRefused: "This device did not allow it.",
  speak: "Read it aloud",
  overview: "Every level",
  of: "of",
  pictures: { where: "Where", cut: "Cut", above: "From above" },
  isOn: "pinned",
  isOff: "not pinned yet",
} as const;
