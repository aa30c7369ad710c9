import type { Measurements } from "../../src/core/body/measurements";
import { mm } from "../../src/core/units";

/** Lengths in millimeters as measurements of a body or a form. */
export const lengths = (given: { readonly [name: string]: number }): Measurements =>
  Object.fromEntries(Object.entries(given).map(([name, length]) => [name, mm(length)]));
