import { asNear } from "./layersThatFit";
import { tapeAgreement } from "../tolerances";
import { mm } from "../units";
import type { AboveReading, AboveReadingName } from "./buildAbove";

/** Whether more of a reading means more padding; a slope of the shoulder grows less as the shoulder is built up. */
export type Grows = "more" | "less";

/**
 * A reading before and after a build (mm), and what stays: `layerAdds` is what one layer more or less would change it by.
 */
export function aboveReading(
  name: AboveReadingName,
  [before, after, person]: readonly [before: number, after: number, person: number],
  layerAdds: number,
  grows: Grows = "more",
): AboveReading {
  const short = grows === "more" ? person - after : after - person;
  const within = Math.max(asNear(layerAdds), tapeAgreement);
  return {
    name,
    before: mm(before),
    after: mm(after),
    person: mm(person),
    stays:
      Math.abs(short) <= within ? null : { sense: short > 0 ? "short" : "formLarger", amount: mm(Math.abs(short)) },
  };
}
