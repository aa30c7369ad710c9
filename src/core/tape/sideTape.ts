import type { Outline } from "../geometry/outline";
import { assert } from "../result";
import { coincident } from "../tolerances";

/**
 * One side of a section, left or right, as points from center front over the side to center back, mirrored to x ≥ 0: with its
 * outward normals and how far along the bare surface each point lies from center front and from center back (mm).
 */
export interface SideOutline {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly normalX: Float64Array;
  readonly normalY: Float64Array;
  readonly fromFront: Float64Array;
  readonly fromBack: Float64Array;
  readonly frontQuarter: number;
  readonly backQuarter: number;
}

/** What the tape reads on one side: from center front to the side seam, and from there to center back. */
export interface SideReading {
  readonly front: number;
  readonly back: number;
}

/** A side of an outline, of which every `stride`-th point is kept. */
export function sideOutline(
  { count, x, y, normalX, normalY, arcLength, quarters }: Outline,
  isLeft: boolean,
  stride: number,
): SideOutline {
  const frontQuarter = isLeft ? quarters.leftFront : quarters.rightFront;
  const backQuarter = isLeft ? quarters.leftBack : quarters.rightBack;
  const points = count / 2 / stride + 1;
  const side = {
    count: points,
    x: new Float64Array(points),
    y: new Float64Array(points),
    normalX: new Float64Array(points),
    normalY: new Float64Array(points),
    fromFront: new Float64Array(points),
    fromBack: new Float64Array(points),
    frontQuarter,
    backQuarter,
  };
  for (let i = 0; i < points; i++) {
    const at = pointOfSide(i * stride, count, isLeft);
    side.x[i] = Math.abs(x[at] as number);
    side.y[i] = y[at] as number;
    side.normalX[i] = Math.abs(normalX[at] as number);
    side.normalY[i] = normalY[at] as number;
    const isBack = i === points - 1;
    side.fromFront[i] = isBack ? frontQuarter + backQuarter : Math.abs(arcLength[at] as number);
    side.fromBack[i] = frontQuarter + backQuarter - (side.fromFront[i] as number);
  }
  return side;
}

/** Which point of the whole outline, which runs from center back over the right side, is the i-th of a side from center front. */
export function pointOfSide(i: number, count: number, isLeft: boolean): number {
  return isLeft ? (count / 2 + i) % count : count / 2 - i;
}

/**
 * A tape over one side, the other taken as its mirror image: one walk over the points moved out along their normals, dropping every
 * corner that does not turn with it (the scan of `tautRing`), on level with the highest and lowest point at center front and
 * back. The side seam is carried straight out (y = 0). It is asked thousands of times a plan, so it keeps its own room
 * and gives its answer in it.
 */
export function sideTape(outline: SideOutline): (thickness: Float64Array) => SideReading {
  const { count, x, y, normalX, normalY } = outline;
  assert(count >= 3, "a side has points at center front, at the side and at center back");
  const [cornersX, cornersY] = [new Float64Array(count + 2), new Float64Array(count + 2)];
  const answer = { front: 0, back: 0 };
  return (thickness) => {
    let [highest, lowest] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (let i = 0; i < count; i++) {
      const outY = (y[i] as number) + (normalY[i] as number) * (thickness[i] as number);
      if (outY > highest) highest = outY;
      if (outY < lowest) lowest = outY;
    }
    cornersX[0] = 0;
    cornersY[0] = highest;
    let size = 1;
    for (let i = 0; i <= count; i++) {
      const out = i < count ? (thickness[i] as number) : 0;
      const toX = i < count ? (x[i] as number) + (normalX[i] as number) * out : 0;
      const toY = i < count ? (y[i] as number) + (normalY[i] as number) * out : lowest;
      while (size >= 2) {
        const fromX = cornersX[size - 2] as number;
        const fromY = cornersY[size - 2] as number;
        const turn =
          ((cornersX[size - 1] as number) - fromX) * (toY - fromY) -
          ((cornersY[size - 1] as number) - fromY) * (toX - fromX);
        if (turn < 0) break;
        size--;
      }
      // Rounding alone would turn the way between two points that are one.
      if (
        Math.abs(toX - (cornersX[size - 1] as number)) < coincident &&
        Math.abs(toY - (cornersY[size - 1] as number)) < coincident
      )
        continue;
      cornersX[size] = toX;
      cornersY[size] = toY;
      size++;
    }
    measure(cornersX, cornersY, size, answer);
    return answer;
  };
}

/** Lengths of a chain of corners in front of the side line and behind it. */
function measure(
  cornersX: Float64Array,
  cornersY: Float64Array,
  size: number,
  answer: { front: number; back: number },
): void {
  let [front, back] = [0, 0];
  for (let i = 1; i < size; i++) {
    const fromY = cornersY[i - 1] as number;
    const toY = cornersY[i] as number;
    const runX = (cornersX[i] as number) - (cornersX[i - 1] as number);
    const length = Math.sqrt(runX * runX + (toY - fromY) * (toY - fromY));
    if (toY >= 0) front += length;
    else if (fromY <= 0) back += length;
    else {
      const share = fromY / (fromY - toY);
      front += share * length;
      back += (1 - share) * length;
    }
  }
  answer.front = front;
  answer.back = back;
}
