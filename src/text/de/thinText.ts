import type { LengthUnit } from "../../core/lengthText";
import type { Millimetres } from "../../core/units";
import { writtenLength } from "./writtenLength";

export const thinText = (length: Millimetres, unit: LengthUnit): string => {
  const text = writtenLength(length, unit === "in" ? "1/32 in" : "0.1 mm");
  return /^0 /.test(text) ? `weniger als ${unit === "in" ? "1/32 in" : "0,1 mm"}` : text;
};
