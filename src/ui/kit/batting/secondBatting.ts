import type { LengthUnit } from "../../../core/lengthText";
import { type BattingEntry, entryLength } from "../../../document/fitting";
import { battingGuesses } from "../../../text/batting";

/** A second batting to start from: the thickest usual one that is thinner than the first, or else the thinnest there is. */
export function secondBatting(first: BattingEntry, unit: LengthUnit): BattingEntry {
  const layerMm = (text: BattingEntry["layerThickness"]): number => {
    const layer = entryLength(text, unit);
    return layer.ok ? layer.value : Number.POSITIVE_INFINITY;
  };
  const limit = layerMm(first.layerThickness);
  const thinFirst = battingGuesses.toSorted((a, b) => layerMm(a.layer[unit]) - layerMm(b.layer[unit]));
  const guess = thinFirst.findLast(({ layer }) => layerMm(layer[unit]) < limit) ?? thinFirst[0] ?? battingGuesses[0];
  return { name: guess.name, layerThickness: guess.layer[unit] };
}
