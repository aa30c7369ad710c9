import { fineStep, type LengthStep, type LengthUnit } from "../core/lengthText";
import { type BattingEntry, entryLength } from "../document/fitting";
import { battingGuesses, battingWords } from "./batting";
import { shownLength } from "./shownLength";

/** A layer is thin: millimetres beside centimetres, sixteenths beside inches. */
export const thinStep = (unit: LengthUnit): LengthStep => (unit === "in" ? fineStep.in : "1 mm");

/** A batting with what one layer of it is taken to add; an entry that cannot be read stands as it was typed. */
export function battingText({ name, layerThickness }: BattingEntry, unit: LengthUnit): string {
  const layer = entryLength(layerThickness, unit);
  return battingWords.layerShort(name, layer.ok ? shownLength(layer.value, thinStep(unit)) : String(layerThickness));
}

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
