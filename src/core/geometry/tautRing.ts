import { coincident } from "../tolerances";

/**
 * What a taut tape touches of a ring of points in a level plane, given as flat coordinates [x0, y0, x1, y1, …]: the corners of their
 * convex hull, in the same order, without points that lie on an edge. The ring runs clockwise, and every point of it is seen from far off
 * along a ray of its own which no other part of the ring crosses. So it is with a convex outline whose points are moved out along their
 * normals, since such normals never meet outside; and for such a ring one walk round, dropping every corner that does not turn
 * with it, is enough (Sklansky's scan, right for rings seen from outside: Toussaint and Avis, Pattern Recognition 15, 1982, 23-29,
 * cited from memory). No points give no corners, coincident points one; points there and back on a line are no ring.
 */
export function tautRing(points: Float64Array): Float64Array {
  const count = points.length / 2;
  const corners = new Float64Array(points.length);
  const start = lowest(points);
  let size = 0;
  for (let step = 0; step < count; step++) {
    const i = start + step < count ? start + step : start + step - count;
    const x = points[2 * i] as number;
    const y = points[2 * i + 1] as number;
    size = turning(corners, size, x, y);
    if (size > 0 && isSame(corners[size - 2] as number, corners[size - 1] as number, x, y)) continue;
    corners[size] = x;
    corners[size + 1] = y;
    size += 2;
  }
  return corners.subarray(0, turning(corners, size, corners[0] as number, corners[1] as number));
}

/** Rounding alone would turn the way from one of two such points to the other, and hold back corners that have to go. */
const isSame = (fromX: number, fromY: number, x: number, y: number): boolean =>
  Math.abs(x - fromX) < coincident && Math.abs(y - fromY) < coincident;

/** The lowest point, of several the leftmost: there a clockwise ring ends its lowest edge. */
function lowest(points: Float64Array): number {
  let found = 0;
  for (let i = 1; 2 * i < points.length; i++) {
    const lower = (points[2 * found + 1] as number) - (points[2 * i + 1] as number);
    if (lower > 0 || (lower === 0 && (points[2 * i] as number) < (points[2 * found] as number))) found = i;
  }
  return found;
}

/** How many numbers of the corners are left once those that do not turn clockwise towards the next point are dropped. */
function turning(corners: Float64Array, size: number, x: number, y: number): number {
  let left = size;
  while (left >= 4) {
    const fromX = corners[left - 4] as number;
    const fromY = corners[left - 3] as number;
    const midX = corners[left - 2] as number;
    const midY = corners[left - 1] as number;
    if ((midX - fromX) * (y - fromY) - (midY - fromY) * (x - fromX) < 0) break;
    left -= 2;
  }
  return left;
}
