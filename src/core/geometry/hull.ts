/**
 * The convex hull of points in a level plane: what a taut tape touches. Given flat coordinates [x0, y0, x1, y1, …] it
 * returns the hull's corners the same way, anticlockwise, without points that lie on an edge (Andrew, Inf. Process.
 * Lett. 9, 1979, 216-219). No points give no corners; one point, or coincident points, one corner; points on a line its two ends.
 */
export function hull(points: Float64Array): Float64Array {
  const order = sortedByX(points);
  const corners = new Float64Array(points.length + 2);
  const lower = chain(points, order, corners, 0, 1);
  if (order.length < 2 || lower === 2) return corners.subarray(0, Math.min(lower, points.length));
  const all = chain(points, order, corners, lower - 2, -1);
  return corners.subarray(0, all - 2);
}

/**
 * The order of the points by x, and by y where x is the same: a natural merge sort, because the points of an outline come in a
 * few runs that rise or fall.
 */
function sortedByX(points: Float64Array): Uint32Array {
  const count = points.length / 2;
  let order = new Uint32Array(count);
  let spare = new Uint32Array(count);
  let ends = risingRuns(points, order);
  while (ends.length > 1) {
    const mergedEnds: number[] = [];
    let from = 0;
    for (let run = 0; run < ends.length; run += 2) {
      const middle = ends[run] as number;
      const to = ends[run + 1] ?? middle;
      merge(points, order, spare, from, middle, to);
      mergedEnds.push(to);
      from = to;
    }
    [order, spare, ends] = [spare, order, mergedEnds];
  }
  return order;
}

/** Lays the points out in runs that rise, falling ones turned round, and tells where each run ends. */
function risingRuns(points: Float64Array, order: Uint32Array): readonly number[] {
  const count = order.length;
  const ends: number[] = [];
  let from = 0;
  while (from < count) {
    let to = from + 1;
    const isFalling = to < count && isAfter(points, from, to);
    while (to < count && isAfter(points, to - 1, to) === isFalling) to++;
    for (let i = from; i < to; i++) order[i] = isFalling ? to - 1 - (i - from) : i;
    ends.push(to);
    from = to;
  }
  return ends;
}

function merge(points: Float64Array, from: Uint32Array, into: Uint32Array, start: number, middle: number, end: number) {
  let [left, right] = [start, middle];
  for (let place = start; place < end; place++) {
    const takesRight = left >= middle || (right < end && isAfter(points, from[left] as number, from[right] as number));
    into[place] = from[takesRight ? right++ : left++] as number;
  }
}

function isAfter(points: Float64Array, i: number, j: number): boolean {
  const [x, otherX] = [points[2 * i] as number, points[2 * j] as number];
  return x > otherX || (x === otherX && (points[2 * i + 1] as number) > (points[2 * j + 1] as number));
}

/** Adds one chain to the corners from `start` (in numbers, not points), forwards or backwards; returns the new length. */
function chain(points: Float64Array, order: Uint32Array, corners: Float64Array, start: number, way: 1 | -1): number {
  const last = order.length - 1;
  let size = start;
  for (let step = 0; step <= last; step++) {
    const i = order[way === 1 ? step : last - step] as number;
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
  const fromX = corners[size - 4] as number;
  const fromY = corners[size - 3] as number;
  const midX = corners[size - 2] as number;
  const midY = corners[size - 1] as number;
  return (midX - fromX) * (y - fromY) - (midY - fromY) * (x - fromX) > 0;
}
