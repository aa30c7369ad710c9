import { quarterLengths } from "../geometry/superellipse";
import { root } from "../numerics/root";
import { mm } from "../units";
import type { HalvesSection } from "./section";

/** A section's half-breadths and exponents, without its depths. */
export type SectionFrame = Pick<HalvesSection, "leftBreadth" | "rightBreadth" | "frontExponent" | "backExponent">;

/**
 * The section of given half-breadths and exponents whose tape reads these lengths (mm) in front and behind. A half of
 * length L needs a half-breadth below L/2; breadths that are too wide for a length give way.
 */
export function sectionOfLengths(frame: SectionFrame, front: number, back: number): HalvesSection {
  const widest = widestShare * Math.min(front, back);
  const scale = Math.min(1, (2 * widest) / (frame.leftBreadth + frame.rightBreadth));
  const [left, right] = [mm(scale * frame.leftBreadth), mm(scale * frame.rightBreadth)];
  const { frontExponent, backExponent } = frame;
  return {
    leftBreadth: left,
    rightBreadth: right,
    frontDepth: mm(halfDepth(left, right, frontExponent, front)),
    backDepth: mm(halfDepth(left, right, backExponent, back)),
    frontExponent,
    backExponent,
  };
}

/** The widest half-breadth as a share of an arc: a flat half would have 0.5, and a tape over it no depth at all. */
export const widestShare = 0.46;

/** Readings of a half are met to a hundredth of a millimeter, fifty times finer than a tape is read. */
export const lengthPrecision = 0.01;

function halfDepth(left: number, right: number, exponent: number, arc: number): number {
  const length = quarterLengths(exponent);
  const reading =
    left === right
      ? (depth: number) => 2 * length(left, depth) - arc
      : (depth: number) => length(left, depth) + length(right, depth) - arc;
  const found = root(reading, { from: 0, to: arc, precision: lengthPrecision });
  return found.kind === "converged" ? found.value : found.nearest;
}
