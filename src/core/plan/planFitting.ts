import { levelNames } from "../body/vocabulary";
import { shapePieces } from "../padding/shapePieces";
import { assemblePlan } from "./assemblePlan";
import { basis, noOffset, type PlanInput } from "./basis";
import type { Plan } from "./plan";
import { tapeAgreement } from "../tolerances";
import { shapingProblem } from "./planShaping";
import type { Start } from "./start";

/**
 * The river in one reading: what was measured of a body and of a form becomes pieces of batting, what the tape must read
 * after each, and what padding cannot do. The measurements have passed the checks for contradictions.
 */
export function planFitting(input: PlanInput): Plan {
  const { batting, finishingBatting } = input;
  const from = basis(input);
  const start: Start = {
    pinned: [],
    offsets: levelNames.map(() => noOffset),
    layer: { each: batting.layerThickness, bonus: 0 },
    takenIds: [],
  };
  const targets = levelNames.map((name) => from.targets[name].quarters);
  const pieces = shapePieces(shapingProblem(from, start, targets), finishingBatting?.layerThickness ?? null);
  return assemblePlan(input, from, start, pieces, tapeAgreement);
}
