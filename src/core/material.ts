import type { Millimetres, Ratio } from "./units";

/**
 * A batting: what the packet or the person calls it, and what is known of one layer of it under a snug tape (mm,
 * compressed). The deviation is one standard deviation as a share of the thickness; a packet alone says
 * little, because published lofts for one weight disagree more than twofold.
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
