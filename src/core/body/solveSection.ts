import { quarterLengths } from "../geometry/superellipse";
import { root } from "../numerics/root";
import { mm, ratio } from "../units";
import type { LevelReadings } from "./levelReadings";
import type { Section } from "./section";

/**
 * The section whose tape reads what was measured at a level: half-breadth from the breadth, then front and back depth
 * from the arcs. A half of length F needs a half-breadth below F/2; an estimated breadth that is too wide for an arc
 * gives way down to that. Where left and right were measured, the left and right half-breadths differ (their sum is the breadth)
 * until the left half of the girth reads right.
 */
export function solveSection(level: LevelReadings): Section {
  const { frontArc, backArc, exponent, quarters } = level;
  const half = Math.min(level.breadth.value / 2, widestShare * Math.min(frontArc.value, backArc.value));
  const length = quarterLengths(exponent);
  const lean = quarters === null ? 0 : solveLean(level, half, length, quarters.leftFront + quarters.leftBack);
  const [left, right] = [half + lean, half - lean];
  return {
    leftBreadth: mm(left),
    rightBreadth: mm(right),
    frontDepth: mm(halfDepth(left, right, length, frontArc.value)),
    backDepth: mm(halfDepth(left, right, length, backArc.value)),
    exponent: ratio(exponent),
  };
}

/** The widest half-breadth as a share of an arc: a flat half would have 0.5, and a tape over it no depth at all. */
const widestShare = 0.46;

/** Readings of a half are met to a hundredth of a millimetre, fifty times finer than a tape is read. */
const precision = 0.01;

/** The length of a quarter of given half-breadth and depth at the level's exponent (mm). */
type QuarterLength = (breadth: number, depth: number) => number;

function halfDepth(left: number, right: number, length: QuarterLength, arc: number): number {
  const reading = (depth: number) => length(left, depth) + length(right, depth) - arc;
  const found = root(reading, { from: 0, to: arc, precision });
  return found.kind === "converged" ? found.value : found.nearest;
}

function solveLean(
  { frontArc, backArc }: LevelReadings,
  half: number,
  length: QuarterLength,
  leftGirth: number,
): number {
  const miss = (lean: number) => {
    const [left, right] = [half + lean, half - lean];
    const front = halfDepth(left, right, length, frontArc.value);
    const back = halfDepth(left, right, length, backArc.value);
    return length(left, front) + length(left, back) - leftGirth;
  };
  const most = 0.3 * half;
  const found = root(miss, { from: -most, to: most, precision: 10 * precision });
  return found.kind === "converged" ? found.value : found.nearest;
}
