/** What the file of a fitting is held to, apart from its shape. */
export const newestVersion = 1;

/** What is made ready before the first piece: the form stands firm, with whatever it will wear under the padding. */
export const preparations = ["form"] as const;

/** What is made of a cover, in the order of the work. */
export const coverMakings = [
  "coverCut",
  "coverSewn",
  "coverFitted",
  "coverClosed",
  "coverCorrected",
  "coverHemmed",
] as const;

/** What is made once the padding is done, in the order of the work. */
export const makings = [
  ...coverMakings,
  "waistTape",
  "styleLines",
  "armCut",
  "armSewn",
  "armFilled",
  "armHung",
  "putAway",
] as const;
export type Making = (typeof makings)[number];

/** What the cover is made of: knit cut from the panels, knit pinned tight as it is, woven cloth, or no cover at all. */
export const coverCloths = ["knit", "pulledKnit", "woven", "none"] as const;
export type CoverCloth = (typeof coverCloths)[number];

/** How a soft arm is cut, and how its cap meets the form; the first of each if nothing is said. */
export const armCuts = ["twoPieces", "onePiece"] as const;
export const armCaps = ["ownOval", "gathered"] as const;

/**
 * How long a log may be. A log that is added to here ends sooner, so that the file of it can be opened by every release
 * and in no more time than a person waits; earlier releases let it grow, and what they saved opens.
 */
export const mostEntries = 1990;
export const mostPinned = 600;
export const mostEntriesRead = 10_000;

/**
 * What a form is made of, by what it does to a pin: cloth over papier-mâché, foam, a hard shell, a shell with dials, a shell under stretch
 * cloth or with collapsible shoulders.
 */
export const formKinds = ["cloth", "foam", "hard", "dials", "stretch"] as const;
export type FormKind = (typeof formKinds)[number];

/** A stack of more layers than this above the bust is a slip: a plan never asks for more than twelve. */
export const mostLayersAbove = 20;

/** Three times the pieces of the largest plan that was seen. */
export const mostAtOnce = 200;

/** Of a note to a step: what is said to a class in some minutes (letters). */
export const longestStepNote = 1000;

export const noDrafts = { body: {}, form: {}, other: {} };

export const usualSettings = { roundInches: "1/8" } as const;

/** The longest length a plan file may say. */
export const longestMm = 20_000;
