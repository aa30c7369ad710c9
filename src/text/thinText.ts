import type { LengthUnit } from "../core/lengthText";
import type { Millimetres } from "../core/units";
import { writtenLength } from "./writtenLength";

/** A thin thing in the reader's unit: to a tenth of a millimeter, or to a 32nd of an inch, below which it is "less than 1/32 in". */
export const thinText = (length: Millimetres, unit: LengthUnit): string => {
  const text = writtenLength(length, unit === "in" ? "1/32 in" : "0.1 mm");
  return /^0 /.test(text) ? `less than ${unit === "in" ? "1/32 in" : "0.1 mm"}` : text;
};
