import { fineStep, type LengthStep, type LengthUnit } from "../../../core/lengthText";
import { type BattingEntry, entryLength } from "../../../document/fitting";
import { battingWords } from "../../../text/batting";
import { shownLength } from "../../../text/shownLength";

/** A layer is thin: millimetres beside centimetres, sixteenths beside inches. */
export const thinStep = (unit: LengthUnit): LengthStep => (unit === "in" ? fineStep.in : "1 mm");

/** A batting with what one layer of it is taken to be worth; an entry that cannot be read stands as it was typed. */
export function battingText({ name, layerThickness }: BattingEntry, unit: LengthUnit): string {
  const layer = entryLength(layerThickness, unit);
  return battingWords.layerShort(name, layer.ok ? shownLength(layer.value, thinStep(unit)) : String(layerThickness));
}
