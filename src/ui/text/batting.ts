import type { BattingRole } from "../../core/material";

/** Words about batting: what it is called, and the guesses a person may start from. */
export const battingWords = {
  title: "The batting",
  workedOutFor: "Worked out for",
  ask: "Which batting have you got?",
  supposedFor: "Nobody said yet, so the plan supposes",
  another: "Another, or one you have measured",
  usual: "usual wadding",
  name: "What it is called",
  /** Until a tape has been laid over a layer nobody knows what it is worth. */
  layer: (isRead: boolean): string => `What one layer ${isRead ? "is" : "may be"} worth, under a snug tape`,
  layerNote:
    "A packet cannot say: published figures for one weight differ more than twofold. Start from a guess; the tape corrects it.",
  layerShort: (name: string, layer: string): string => `${name}, one layer about ${layer}`,
  change: "Change the batting",
  guesses: "Guesses to start from",
  /** The sentence about one batting or two, around the words of each. */
  finishedWith: "finished with",
  first: "The batting it is built with",
  finishing: "A second batting to finish with",
  finishingNote:
    "Mostly a thinner one, for the outermost pieces. The plan uses it only where it makes fewer pieces that still read true.",
  finishingAdd: "Add a second batting",
  finishingRemove: "Take the second batting away",
  added: "A second batting is added.",
  removed: "The second batting is taken away.",
  allOf: (name: string): string => `Every piece of this plan is cut from ${name}; nothing of the other is needed.`,
  cutFrom: (name: string): string => `Cut from ${name}.`,
} as const;

/** What the two battings are called where a piece says which it is cut from: never the same for both, never nothing. */
export function twoBattingNames(building: string, finishing: string): { readonly [role in BattingRole]: string } {
  const names = { building: building.trim(), finishing: finishing.trim() };
  if (names.building !== "" && names.building.toLowerCase() === names.finishing.toLowerCase()) {
    return { building: `${names.building} (the first)`, finishing: `${names.finishing} (the second)` };
  }
  return { building: names.building || "the first batting", finishing: names.finishing || "the second batting" };
}

/** How much of a batting to have, in words for a screen and in fewer for paper. */
export const battingNeed = (name: string, area: string): string =>
  `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${area}, which is the pieces and a quarter more for what lies between them.`;

export const battingAmount = (area: string): string => `Have ${area}: the pieces and a quarter more.`;

/**
 * Starting guesses for one layer under a snug tape. Trade and hobby statements, none from a laboratory: needled cotton
 * about 2.5 mm (a trade poster), bonded polyester about 5 mm at 68 g/m² (the same), and 4 to 8 mm for 140 to 170 g/m²
 * under a cover, which is our own inference.
 */
export const battingGuesses = [
  { name: "needled cotton", layer: "2.5 mm" },
  { name: "thin bonded wadding", layer: "4 mm" },
  { name: "bonded wadding", layer: "6 mm" },
  { name: "high-loft wadding", layer: "10 mm" },
] as const;
