/**
 * The convex hull of points in a level plane: what a taut tape touches. Given flat coordinates [x0, y0, x1, y1, …] it
 * returns the hull's corners the same way, anticlockwise, without points that lie on an edge (Andrew, Inf. Process.
 * Lett. 9, 1979, 216-219). No points give no corners; one point, or coincident points, one corner; points on a line its two ends.
 */
export function hull(points: Float64Array): Float64Array {
  const order = sortedByX(points);
  const corners = new Float64Array(points.length + 2);
  const lower = chain(points, order, corners, 0, 1);
  if (order.length < 2 || lower === 2) return corners.slice(0, Math.min(lower, points.length));
  const all = chain(points, order, corners, lower - 2, -1);
  return corners.slice(0, all - 2);
}

function sortedByX(points: Float64Array): Uint16Array | Uint32Array {
  const count = points.length / 2;
  const order = new Uint32Array(count);
  // The points of an outline come nearly sorted in two runs, which insertion sort takes in almost one pass each.
  for (let i = 0; i < count; i++) {
    const x = points[2 * i] as number;
    const y = points[2 * i + 1] as number;
    let place = i;
    while (place > 0 && isAfter(points, order[place - 1] as number, x, y)) {
      order[place] = order[place - 1] as number;
      place--;
    }
    order[place] = i;
  }
  return order;
}

function isAfter(points: Float64Array, i: number, x: number, y: number): boolean {
  const otherX = points[2 * i] as number;
  return otherX > x || (otherX === x && (points[2 * i + 1] as number) > y);
}

/** Adds one chain to the corners from `start` (in numbers, not points), forwards or backwards; returns the new length. */
function chain(
  points: Float64Array,
  order: Uint32Array | Uint16Array,
  corners: Float64Array,
  start: number,
  way: 1 | -1,
): number {
  let size = start;
  for (let step = 0; step < order.length; step++) {
    const i = order[way === 1 ? step : order.length - 1 - step] as number;
    const x = points[2 * i] as number;
    const y = points[2 * i + 1] as number;
    while (size >= start + 4 && !turnsLeft(corners, size, x, y)) size -= 2;
    if (size === start || x !== corners[size - 2] || y !== corners[size - 1]) {
      corners[size] = x;
      corners[size + 1] = y;
      size += 2;
    }
  }
  return size;
}

function turnsLeft(corners: Float64Array, size: number, x: number, y: number): boolean {
  const [fromX, fromY] = [corners[size - 4] as number, corners[size - 3] as number];
  const [midX, midY] = [corners[size - 2] as number, corners[size - 1] as number];
  return (midX - fromX) * (y - fromY) - (midY - fromY) * (x - fromX) > 0;
}
