import type { QuarterLengths } from "../geometry/outline";
import { tapeQuarters } from "../tape/tape";
import type { Station } from "./stack";

/**
 * What the first layer of a stack is worth beyond every further one (mm), which the layers over it squeeze: a stack's
 * thickness is planned as so many layers of `layer` each, and wherever anything lies at all, the bonus of one layer comes on top.
 * Without a squeeze the bonus is zero.
 */
export interface FirstLayer {
  readonly layer: number;
  readonly bonus: number;
}

export const noBonus: FirstLayer = { layer: 1, bonus: 0 };

/** The tape over a stack of planned thickness at one height, in quarters (mm), the first layer's bonus counted in. */
export function paddedTape(station: Station, thickness: Float64Array, { layer, bonus }: FirstLayer): QuarterLengths {
  if (bonus === 0) return tapeQuarters(station.outline, thickness);
  const whole = new Float64Array(thickness.length);
  for (let i = 0; i < whole.length; i++) {
    const planned = thickness[i] as number;
    whole[i] = planned + bonus * Math.min(1, planned / layer);
  }
  return tapeQuarters(station.outline, whole);
}
