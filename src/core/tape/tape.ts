import { tautRing } from "../geometry/tautRing";
import type { Outline, QuarterLengths } from "../geometry/outline";
import { assert } from "../result";

/** Points in each eighth of the outline the tape is laid round: three millimeters apart, they see where feathered edges end. */
export const tapePoints = 36;

/**
 * The one simulated tape. A taut tape at one level lies on the convex hull of the section with its padding. Padding of a
 * given thickness at each point of the outline stands out along the bare surface's normal (mm, compressed). The tape
 * is read in four quarters: centre front, centre back and the side seams of the bare form are carried straight out
 * (along x = 0 and y = 0) through the padding onto the tape.
 */
export function tapeQuarters(outline: Outline, thickness: Float64Array): QuarterLengths {
  return ringQuarters(tautRing(paddedPoints(outline, thickness)));
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
function ringQuarters(corners: Float64Array): QuarterLengths {
  const count = corners.length / 2;
  assert(count >= 3, "the tape lies round a section with some breadth and depth");
  let [leftFront, rightFront, leftBack, rightBack] = [0, 0, 0, 0];
  let fromX = corners[2 * count - 2] as number;
  let fromY = corners[2 * count - 1] as number;
  for (let i = 0; i < count; i++) {
    const toX = corners[2 * i] as number;
    const toY = corners[2 * i + 1] as number;
    const runX = toX - fromX;
    const runY = toY - fromY;
    const length = Math.sqrt(runX * runX + runY * runY);
    // Where the edge is cut by the middle line and the seam line, as shares of its length; at its end if it is not.
    const atMiddle = fromX * toX < 0 ? -fromX / runX : 1;
    const atSeam = fromY * toY < 0 ? -fromY / runY : 1;
    let start = 0;
    for (let part = 0; start < 1; part++) {
      const end = part === 0 ? Math.min(atMiddle, atSeam) : part === 1 ? Math.max(atMiddle, atSeam) : 1;
      const between = (start + end) / 2;
      const isLeft = fromX + runX * between > 0;
      const share = length * (end - start);
      if (fromY + runY * between > 0) {
        if (isLeft) leftFront += share;
        else rightFront += share;
      } else if (isLeft) leftBack += share;
      else rightBack += share;
      start = end;
    }
    fromX = toX;
    fromY = toY;
  }
  return { leftFront, rightFront, leftBack, rightBack };
}
