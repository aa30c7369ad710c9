import { quarterLengths } from "../geometry/outline";
import { root } from "../numerics/root";
import { straightDeviation } from "../tolerances";
import { mm, ratio } from "../units";
import type { LevelReadings } from "./levelReadings";
import type { Reading } from "./reading";
import type { HalvesSection } from "./section";
import { lengthPrecision, sectionOfLengths, widestShare } from "./sectionOfLengths";

/**
 * The section whose tape reads what was measured at a level. The tape's lengths are met; breadth, depth and exponents are
 * the most probable that meet them, each by its standard deviation: without a depth the breadth is as it was read or
 * estimated and the exponents are the prior's; a depth moves both. An estimated breadth that is too wide for an arc
 * gives way. Where left and right were measured, the left and right half-breadths differ (their sum is the breadth)
 * until the left half of the girth reads right.
 */
export function solveSection(level: LevelReadings): HalvesSection {
  return sectionWith(level, level.depth === null ? even : mostProbable(level, level.depth));
}

/** How far breadth and exponents are from their middle, in standard deviations. */
interface Deviation {
  readonly breadth: number;
  readonly exponent: number;
}
const even: Deviation = { breadth: 0, exponent: 0 };

/** Gauss-Newton on two deviations and the one residual of the depth; it settles in three rounds, five are given. */
function mostProbable(level: LevelReadings, depth: Reading): Deviation {
  const depthDeviation = depth.kind === "estimated" ? depth.standardDeviation : straightDeviation;
  const residual = (at: Deviation) => {
    const { frontDepth, backDepth } = sectionWith({ ...level, quarters: null }, at);
    return (frontDepth + backDepth - depth.value) / depthDeviation;
  };
  let at = even;
  for (let round = 0; round < 5; round++) {
    const now = residual(at);
    const byBreadth = (residual({ ...at, breadth: at.breadth + probe }) - now) / probe;
    const byExponent = (residual({ ...at, exponent: at.exponent + probe }) - now) / probe;
    const scale =
      (byBreadth * at.breadth + byExponent * at.exponent - now) / (1 + byBreadth * byBreadth + byExponent * byExponent);
    at = { breadth: held(scale * byBreadth), exponent: held(scale * byExponent) };
  }
  return at;
}

/** A step (in standard deviations) far above the precision of the lengths and far below what matters. */
const probe = 0.05;

/** Readings further off than this many standard deviations are no reason for a stranger curve. */
const furthest = 3;
const held = (deviation: number): number => Math.max(-furthest, Math.min(furthest, deviation));

/** Between an ellipse that is almost a rhombus and a box: no torso is outside. */
const exponentRange = { least: 1.6, most: 6 } as const;

/** The middle of a breadth lies off center by no more than this share of half of it. */
const mostLean = 0.3;

function sectionWith(level: LevelReadings, { breadth: wide, exponent: square }: Deviation): HalvesSection {
  const { frontArc, backArc, breadth, exponents, quarters } = level;
  const standardDeviation = breadth.kind === "estimated" ? breadth.standardDeviation : straightDeviation;
  const half = Math.min(
    (breadth.value + wide * standardDeviation) / 2,
    widestShare * Math.min(frontArc.value, backArc.value),
  );
  const exponent = (middle: number) =>
    ratio(Math.max(exponentRange.least, Math.min(exponentRange.most, middle + square * exponents.standardDeviation)));
  const leaning = (lean: number) =>
    sectionOfLengths(
      {
        leftBreadth: mm(half + lean),
        rightBreadth: mm(half - lean),
        frontExponent: exponent(exponents.front),
        backExponent: exponent(exponents.back),
      },
      frontArc.value,
      backArc.value,
    );
  if (quarters === null) return leaning(0);
  // The larger side is solved for, whichever it is: mirrored readings give the mirrored section to the last digit.
  const [left, right] = [quarters.leftFront + quarters.leftBack, quarters.rightFront + quarters.rightBack];
  const miss = (lean: number) => {
    const { leftFront, leftBack } = quarterLengths(leaning(lean));
    return leftFront + leftBack - Math.max(left, right);
  };
  const found = root(miss, { from: 0, to: mostLean * half, precision: 10 * lengthPrecision });
  const lean = found.kind === "converged" ? found.value : found.nearest;
  return leaning(left < right ? -lean : lean);
}
