import type { ClothWidthId } from "../core/supplies/goods";
import type { LengthUnit } from "../core/lengthText";
import { noBreakSpace } from "./shownLength";

/** What the same width is called in either unit. */
const clothSizes: { readonly [width in ClothWidthId]: { readonly in: number; readonly cm: number } } = {
  "150-cm": { in: 60, cm: 150 },
  "115-cm": { in: 45, cm: 115 },
};

export const clothSize = (width: ClothWidthId, unit: LengthUnit): string => {
  const named = unit === "in" ? "in" : "cm";
  return `${clothSizes[width][named]}${noBreakSpace}${named}`;
};
