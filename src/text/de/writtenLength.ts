import { formatLength, type LengthStep } from "../../core/lengthText";
import type { Millimetres } from "../../core/units";

/** As German writes it: `97,5 cm`, `1.234,5 mm`. Fractions of an inch stay as they are. */
export const writtenLength = (length: Millimetres, step: LengthStep, style: "withUnit" | "bare" = "withUnit"): string =>
  formatLength(length, step, style).replace(/\d+\.\d+|\d{4,}/, (amount) => figures.format(Number(amount)));

const figures = new Intl.NumberFormat("de", { maximumFractionDigits: 3 });
