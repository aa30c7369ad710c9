import { assert } from "../result";

/**
 * A smooth curve through values given at increasing heights that never overshoots them: monotone wherever the values
 * are, flat at their peaks and hollows (piecewise cubic Hermite interpolation after Fritsch and Carlson, SIAM J. Numer.
 * Anal. 17, 1980, 238-246, with the weighted harmonic slopes of Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5, 1984,
 * 300-304). Above the first and below the last height the curve stays at the end value. One point gives a constant.
 */
export type HeightCurve = (height: number) => number;

export function heightCurve(heights: readonly number[], values: readonly number[]): HeightCurve {
  const count = heights.length;
  assert(count > 0 && values.length === count, "a height curve has one value for each height");
  const gaps = gapsBetween(heights);
  const rises = gaps.map((gap, i) => ((values[i + 1] as number) - (values[i] as number)) / gap);
  const slopes = heights.map((_, i) => slopeAt(i, gaps, rises));
  return (height) => {
    if (height <= (heights[0] as number)) return values[0] as number;
    if (height >= (heights[count - 1] as number)) return values[count - 1] as number;
    let i = 0;
    while (height > (heights[i + 1] as number)) i++;
    const gap = gaps[i] as number;
    const t = (height - (heights[i] as number)) / gap;
    const [from, to] = [values[i] as number, values[i + 1] as number];
    const [leave, arrive] = [gap * (slopes[i] as number), gap * (slopes[i + 1] as number)];
    const rest = 1 - t;
    return (
      from * (1 + 2 * t) * rest * rest + leave * t * rest * rest + to * t * t * (3 - 2 * t) - arrive * t * t * rest
    );
  };
}

function gapsBetween(heights: readonly number[]): readonly number[] {
  const gaps = heights.slice(1).map((height, i) => height - (heights[i] as number));
  assert(
    gaps.every((gap) => gap > 0),
    "the heights of a curve increase",
  );
  return gaps;
}

/** Flat at an end or at a turn; else the weighted harmonic mean of the rises on both sides. */
function slopeAt(i: number, gaps: readonly number[], rises: readonly number[]): number {
  const before = rises[i - 1];
  const after = rises[i];
  if (before === undefined || after === undefined || before * after <= 0) return 0;
  const [gapBefore, gapAfter] = [gaps[i - 1] as number, gaps[i] as number];
  const weightBefore = 2 * gapAfter + gapBefore;
  const weightAfter = gapAfter + 2 * gapBefore;
  return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
}
