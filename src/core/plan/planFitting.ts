import { levelNames } from "../body/vocabulary";
import { shapeBatch } from "../padding/shapeBatch";
import { noBonus } from "../padding/paddedTape";
import { assemblePlan } from "./assemblePlan";
import { basis, noOffset, type PlanInput } from "./basis";
import type { Plan } from "./plan";

/**
 * The river in one reading: what was measured of a body and of a form becomes pieces of batting, what the tape must read
 * after each, and what padding cannot do. The measurements have passed the checks for contradictions.
 */
export function planFitting(input: PlanInput): Plan {
  const { batting, finishingBatting } = input;
  const from = basis(input);
  const start = { pinned: [], offsets: levelNames.map(() => noOffset), firstLayer: noBonus, takenIds: [] };
  const pads = shapeBatch({
    surface: from.surface,
    stations: from.stations,
    targets: levelNames.map((name) => from.targets[name].quarters),
    sides: from.sides,
    apex: from.body.apex,
    layers: { building: batting.layerThickness, finishing: finishingBatting?.layerThickness ?? null },
    caution: 0,
    ...start,
  });
  return assemblePlan(input, from, start, pads);
}
