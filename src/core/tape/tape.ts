import { hull } from "../geometry/hull";
import type { Outline, QuarterLengths } from "../geometry/outline";
import { assert } from "../result";

/**
 * The one simulated tape. A taut tape at one level lies on the convex hull of the section with its padding. Padding of a
 * given thickness at each point of the outline stands out along the bare surface's normal (mm, compressed). The tape
 * is read in four quarters: centre front, centre back and the side seams of the bare form are carried straight out
 * (along x = 0 and y = 0) through the padding onto the tape.
 */
export function tapeQuarters(outline: Outline, thickness: Float64Array): QuarterLengths {
  return hullQuarters(hull(paddedPoints(outline, thickness)));
}

/** The padded outline as flat coordinates, before the tape is laid round it. */
export function paddedPoints(outline: Outline, thickness: Float64Array): Float64Array {
  const points = new Float64Array(2 * outline.count);
  for (let i = 0; i < outline.count; i++) {
    const out = thickness[i] as number;
    points[2 * i] = (outline.x[i] as number) + (outline.normalX[i] as number) * out;
    points[2 * i + 1] = (outline.y[i] as number) + (outline.normalY[i] as number) * out;
  }
  return points;
}

/** Splits a closed convex curve's length by the lines x = 0 and y = 0, which must both cross it. */
function hullQuarters(corners: Float64Array): QuarterLengths {
  const count = corners.length / 2;
  assert(count >= 3, "the tape lies round a section with some breadth and depth");
  let [leftFront, rightFront, leftBack, rightBack] = [0, 0, 0, 0];
  let fromX = corners[2 * count - 2] as number;
  let fromY = corners[2 * count - 1] as number;
  for (let i = 0; i < count; i++) {
    const toX = corners[2 * i] as number;
    const toY = corners[2 * i + 1] as number;
    const length = Math.hypot(toX - fromX, toY - fromY);
    const cuts = edgeCuts(fromX, fromY, toX, toY);
    for (let part = 0; part + 1 < cuts.length; part++) {
      const [start, end] = [cuts[part] as number, cuts[part + 1] as number];
      const middle = (start + end) / 2;
      const isLeft = fromX + (toX - fromX) * middle > 0;
      const isFront = fromY + (toY - fromY) * middle > 0;
      const share = length * (end - start);
      if (isFront && isLeft) leftFront += share;
      else if (isFront) rightFront += share;
      else if (isLeft) leftBack += share;
      else rightBack += share;
    }
    fromX = toX;
    fromY = toY;
  }
  return { leftFront, rightFront, leftBack, rightBack };
}

const wholeEdge: readonly number[] = [0, 1];

/** Where an edge is cut by x = 0 and y = 0, as shares of its length, with both ends. */
function edgeCuts(fromX: number, fromY: number, toX: number, toY: number): readonly number[] {
  const crossesMiddle = fromX * toX < 0;
  const crossesSeam = fromY * toY < 0;
  if (!crossesMiddle && !crossesSeam) return wholeEdge;
  const cuts = [0, 1];
  if (crossesMiddle) cuts.push(fromX / (fromX - toX));
  if (crossesSeam) cuts.push(fromY / (fromY - toY));
  return cuts.sort((a, b) => a - b);
}
