import type { LengthUnit } from "../core/lengthText";

/** The batting a fitting starts with until somebody says which it is: the weight that is mostly used for padding. */
export const startingBatting = (unit: LengthUnit): { readonly name: string; readonly layerThickness: string } => ({
  name: "usual batting",
  layerThickness: unit === "in" ? "1/4 in" : "6 mm",
});
