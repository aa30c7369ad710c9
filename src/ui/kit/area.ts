import type { LengthUnit } from "../../core/lengthText";
import type { SquareMillimetres } from "../../core/units";
import { unbroken } from "../../text/shownLength";

/** An area of batting as it is bought: square yards where lengths are in inches, else square metres; to a tenth, upwards. */
export function formatArea(area: SquareMillimetres, unit: LengthUnit): string {
  const perUnit = unit === "in" ? squareYardMm2 : squareMetreMm2;
  const amount = Math.ceil((area / perUnit) * 10) / 10;
  return unbroken(`${amount} ${unit === "in" ? "sq yd" : "m²"}`);
}

/** One yard is 914.4 mm by the international yard and pound agreement of 1959. */
const squareYardMm2 = 914.4 ** 2;
const squareMetreMm2 = 1e6;
