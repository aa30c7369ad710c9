import { root } from "../numerics/root";
import { capEdge } from "../tolerances";
import { type Millimetres, mm, type Ratio, ratio } from "../units";
import { aroundOval, type Oval, oval } from "./oval";

/** The flat end of a form's shoulder, as far as it was measured (mm). */
export interface ArmholePlate {
  readonly height: Millimetres | null;
  readonly breadth: Millimetres | null;
}

/** A cap that fits an oval of the arm's own, edge on edge; or one a little longer, gathered onto an oval as large as the form's armhole plate. */
export type CapWish = "ownOval" | "gathered";

/**
 * How the end of an arm at the shoulder is cut, before the cloth is pulled (mm). `ease` is the share that both caps together are longer than
 * their oval. Where a gathered cap was wished and cannot be had, `refused` says why, and the arm has its own oval.
 */
export interface ArmCap {
  readonly height: Millimetres;
  readonly oval: Oval;
  readonly ease: Ratio;
  readonly refused: CapRefusal | null;
}

/** The plate was not measured in both directions; it is too small or too large around for an arm of this girth. */
export type CapRefusal = "plateUnread" | "plateSmall" | "plateLarge";

/** A cap is longer by this share than the oval it is gathered onto. Common practice, no source. */
const usualEase = 0.05;

/**
 * An armhole plate that nobody measured is taken to be so high (mm). With any height the cap fits its own disc; only where the
 * disc lies on the plate changes. A judgement.
 */
export const usualPlate = mm(130);

/** The cap disc is at least so much higher than broad, so that the cap has a height. A judgement. */
const leastSlant = 1.1;

/** The armpit line stays above this share of the way to the elbow, however high the plate. A judgement. */
const lowestArmpit = 0.6;

/**
 * The dip of the under cap is bent to no smaller radius than this (mm), or an allowance could not be cut around it. At its lowest
 * place the edge of a slanting tube of diameter d, cut off over a height c, has the radius d²/2c when it lies flat.
 */
const roundestDip = 18;

/**
 * The cap of an arm so thick across its upper arm, whose elbow lies so far down. The arm ends as a round tube cut slanting: an oval as broad as the arm
 * is thick (d) and h high ends a cap of √(h² − d²), whose edge is as long as the oval's. Its own oval is as high as the plate
 * but at least 1.1 d. A gathered cap is as high as makes that edge longer than the plate's by the usual ease.
 */
export function armCap(thick: number, toElbow: number, wish: CapWish, plate: ArmholePlate): ArmCap {
  const highest = Math.min(lowestArmpit * toElbow, (thick * thick) / (2 * roundestDip));
  const lowest = thick * Math.sqrt(leastSlant * leastSlant - 1);
  const own = (refused: CapRefusal | null): ArmCap => {
    const tall = Math.max(leastSlant * thick, Math.min(plate.height ?? usualPlate, Math.hypot(thick, highest)));
    const height = Math.sqrt(tall * tall - thick * thick);
    return { height: mm(height), oval: oval(thick, tall), ease: ratio(0), refused };
  };
  if (wish === "ownOval") return own(null);
  if (plate.height === null || plate.breadth === null) return own("plateUnread");
  const onto = oval(plate.breadth, plate.height);
  const edge = (height: number) => aroundOval(oval(thick, Math.hypot(thick, height)));
  const goal = (1 + usualEase) * aroundOval(onto);
  if (edge(lowest) > goal) return own("plateSmall");
  if (edge(highest) < goal) return own("plateLarge");
  const found = root((height) => edge(height) - goal, { from: lowest, to: highest, precision: capEdge });
  const height = found.kind === "converged" ? found.value : found.nearest;
  return { height: mm(height), oval: onto, ease: ratio(usualEase), refused: null };
}
