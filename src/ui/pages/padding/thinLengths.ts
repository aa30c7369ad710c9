import { formatLength, type LengthUnit } from "../../../core/lengthText";
import { mm } from "../../../core/units";
import { type LengthWriter, lengthWriter } from "../../drawing/lengthWriter";

/** How the plot of a layer's worth writes: sixteenths beside inches, tenths of a millimetre otherwise. */
export const thinWriter = (unit: LengthUnit): LengthWriter => (unit === "in" ? lengthWriter("in") : inTenths);

const tenths = (style: "withUnit" | "bare") => (length: number) => formatLength(mm(length), "0.1 mm", style);
const inTenths: LengthWriter = {
  unit: "mm",
  write: tenths("withUnit"),
  writeFine: tenths("withUnit"),
  writeBare: tenths("bare"),
};
