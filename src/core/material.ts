import type { Millimetres, Ratio } from "./units";

/**
 * A batting: what the packet or the person calls it, and what is believed of one layer of it under a snug tape (mm,
 * compressed). The spread is one standard deviation of that belief as a share of the thickness; a packet alone is
 * worth little, because published lofts for one weight disagree more than twofold.
 */
export interface Batting {
  readonly name: string;
  readonly layerThickness: Millimetres;
  readonly relativeDeviation: Ratio;
}

/**
 * The part a batting plays: most of the padding is built with one; a second, usually thinner, may finish it on the outside.
 */
export const battingRoles = ["building", "finishing"] as const;
export type BattingRole = (typeof battingRoles)[number];
