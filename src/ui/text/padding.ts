/** Words of the padding: what to do next, and how far each stretch of the tape still has to go. */
export const tapePartNames = { girth: "all around", frontArc: "front", backArc: "back" } as const;
export type TapePartName = keyof typeof tapePartNames;

const whereWords: { readonly [part in TapePartName]: string } = {
  girth: "all around",
  frontArc: "in front",
  backArc: "in back",
};

/** How a stretch of the tape stands against the person’s. */
export const remainingKinds = ["toGo", "there", "over"] as const;
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

/** The same for a whole line of words about one level. */
export const levelSentence = (level: string, parts: readonly string[]): string => `${level}: ${parts.join(", ")}.`;

export const paddingWords = {
  logFull:
    "The log of this fitting is full, so nothing more can be noted in it. Start a new fitting of the same person to go on.",
  setAside: (count: number): string =>
    count === 1
      ? "One entry of this fitting’s log is not possible, so it is not used. It is kept in the file."
      : `${count} entries of this fitting’s log are not possible, so they are not used. They are kept in the file.`,
  title: "Padding",
  next: "Now",
  andThen: "Then",
  pinned: "It is pinned",
  unpin: "Take this piece off again",
  unpinned: "Taken off again.",
  pinnedAnnounced: (order: number, all: number): string => `Piece ${order} of ${all} is pinned.`,
  back: "Previous piece",
  forward: "Next piece",
  measureThen: (level: string, length: string): string => `Then measure the ${level}: about ${length}.`,
  measureFrontThen: (length: string): string => `In front, side seam to side seam: about ${length}.`,
  allOn: {
    unread: (levels: string): string => `Every piece is on. Now measure ${levels}.`,
    unreadWhy:
      "Only the tape can tell. Measure each level line all around, then its front from side seam to side seam.",
    notYet: (levels: string): string => `Every piece is on. Look at ${levels}.`,
    notYetWhy:
      "Where the padding is short, pin one more thin layer there, or update the remaining pieces; then measure again.",
    done: "Every piece is on, and every level line is on target.",
    doneWhy: "The tape reads so at every line. The cover comes next.",
  },
  anotherWay: "Back to the next step",
  goOn: "Leave it: the next pieces make it good",
  thenRead: (level: string): string => `Then measure the ${level} again.`,
  nowWith: (order: number): string => `As it stands now, with ${order === 1 ? "piece 1" : `pieces up to ${order}`} on`,
  nowSome: (count: number): string => `As it stands now, with ${count} ${count === 1 ? "piece" : "pieces"} on`,
  nowAll: "As it stands now, with every piece on",
  nowBare: "As it stands now: the bare form",
  nowCovered: "Over the cover",
  toFinishing: "Go on to finishing",
  nothing: "On this form the tape already reads as on the person. There is nothing to pin.",
  beforeTitle: "Before the first piece",
  beforeDone: "The lines are marked",
  braTitle: "If a bra is worn, put it on the form",
  readings: "What the tape reads",
  levelTabs: "Level line to measure",
  wanted: "person",
  now: "now",
  left: "left to go",
  braThere: "The bra is on the form already; the pad goes inside its cup.",
  reading: (level: string, part: string): string => `${level}, ${part}`,
  about: (length: string): string => `about ${length}`,
  follows: (length: string): string => `works out at ${length}`,
  pinRow: "Pieces, in the order of pinning",
  pad: "Number pad for the measurement",
  padInto: "Measuring:",
  readNow: (level: string, length: string): string => `Measure the ${level}: about ${length}.`,
  keep: "Save the measurement",
  kept: (what: string, length: string, left: string): string =>
    `${what.charAt(0).toUpperCase()}${what.slice(1)} ${length}: ${left}.`,
  awake: "Leave the screen on while I pin",
  awakeOn: "The screen stays on.",
  awakeRefused: "This device did not allow it.",
  speak: "Read it aloud",
  overview: "Every level line",
  of: "of",
  pictures: { where: "Where", cut: "Cut", above: "From above" },
  isOn: "pinned",
  isOff: "not pinned yet",
} as const;

/**
 * The bra: it shapes what the tape at the bust runs over, so it goes on before the cups and stays. Common practice, no
 * source.
 */
export const braSentence = (hasCupPads: boolean): string =>
  `If a bra is worn under the clothes, put it on the form and pin a tuck in its band until it is snug. ${
    hasCupPads
      ? "Cup pads fill its cups, each when its step comes."
      : "Fill its cups with scraps of batting only until they lie smooth."
  } It stays on, under the cover too.`;
