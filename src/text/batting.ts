import { type Piece, pieceBatting } from "../core/padding/piece";
import type { LengthUnit } from "../core/lengthText";
import type { BattingRole } from "../core/material";
import { startingBatting } from "../document/startingBatting";

/** Words about batting: what it is called, and the figures a person may start from. */
export const battingWords = {
  title: "The batting",
  workedOutFor: "Worked out for",
  ask: "Which batting do you have?",
  supposedFor: "Not chosen yet; for now the plan assumes",
  another: "Another, or one you have measured",
  usual: startingBatting("in").name,
  startsWith: (name: string): string =>
    `Nobody has said which batting there is: the plan is for ${name}, with a starting figure. A trial or a name makes it yours.`,
  name: "What it is called",
  /** Until a tape has been laid over a layer nobody knows how much it adds. */
  layer: (isRead: boolean): string => `One layer ${isRead ? "adds" : "may add"}, under a snug tape`,
  layerNote:
    "A packet does not say: published figures for one weight differ more than twofold. Pick a starting figure; your tape corrects it.",
  layerShort: (name: string, layer: string): string => `${name}, one layer about ${layer}`,
  change: "Change the batting",
  guesses: "Starting figures",
  /** The sentence about one batting or two, around the words of each. */
  finishedWith: "finished with",
  first: "The batting it is built with",
  finishing: "A second batting to finish with",
  finishingNote:
    "Mostly a thinner one, for the outermost pieces. The plan uses it only where that makes fewer pieces that still read on target.",
  finishingAdd: "Add a second batting",
  finishingRemove: "Remove the second batting",
  added: "A second batting is added.",
  removed: "The second batting is removed.",
  allOf: (name: string): string => `Every piece of this plan is cut from ${name}; the other is not needed.`,
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

/** Says of a piece which of two battings it is cut from; null where there is only one, because then there is nothing to choose. */
export type CutFrom = (piece: Pick<Piece, "layers">) => string | null;

export function cutFrom(building: string, finishing: string | null): CutFrom {
  if (finishing === null) return () => null;
  const names = twoBattingNames(building, finishing);
  return (piece) => names[pieceBatting(piece)];
}

/** What each batting of a fitting is called. */
export function battingNames({
  batting,
  finishingBatting,
}: {
  readonly batting: { readonly name: string };
  readonly finishingBatting?: { readonly name: string };
}): { readonly [role in BattingRole]: string } {
  const only = batting.name || battingWords.usual;
  return finishingBatting === undefined
    ? { building: only, finishing: only }
    : twoBattingNames(batting.name, finishingBatting.name);
}

/** Bonded batting of 140 to 170 g/m²: 4 to 8 mm a layer under a snug tape, a starting figure that the tape corrects. */
const usualLayer = {
  in: startingBatting("in").layerThickness,
  cm: startingBatting("cm").layerThickness,
  mm: startingBatting("mm").layerThickness,
} as const;

/**
 * Starting figures for one layer under a snug tape, as a person of each unit would write them. Trade and hobby statements, none from a laboratory: needled cotton
 * about 2.5 mm (a trade poster), bonded polyester about 5 mm at 68 g/m² (the same), and 4 to 8 mm for 140 to 170 g/m²
 * under a cover, which is our own inference.
 */
export const battingGuesses = [
  { name: "needled cotton", layer: { in: "3/32 in", cm: "2.5 mm", mm: "2.5 mm" } },
  { name: "thin bonded batting", layer: { in: "5/32 in", cm: "4 mm", mm: "4 mm" } },
  { name: "bonded batting", layer: usualLayer },
  { name: "high-loft batting", layer: { in: "3/8 in", cm: "10 mm", mm: "10 mm" } },
] as const satisfies readonly { readonly name: string; readonly layer: { readonly [unit in LengthUnit]: string } }[];
