import type { Fitting } from "../../../document/fitting";
import { newFitting } from "../newFitting";

/**
 * Whether the batting is only supposed: the one every fitting starts with, which nobody chose, renamed, gave another
 * thickness or tried under the tape.
 */
export function isBattingSupposed({ batting, unit, work }: Pick<Fitting, "batting" | "unit" | "work">): boolean {
  const usual = newFitting(unit).batting;
  const isUsual = batting.name === usual.name && batting.layerThickness === usual.layerThickness;
  return isUsual && !work.some(({ did }) => did === "trial");
}
