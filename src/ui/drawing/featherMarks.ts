import type { Layer } from "../../core/padding/layer";
import { closedPath, openPath, segment } from "./pathText";
import { at, between, mark, type Mark, type PicturePoint } from "./scene";

/** The band along the edge of a strip or panel that is feathered; a wrap has none where its ends meet, a square edge none at all. */
export function featherMarks(layer: Layer, outline: readonly PicturePoint[]): readonly Mark[] {
  if (layer.feather === 0) return [];
  if (!layer.wrap) {
    const ticks = ticksInward(evenSteps(outline, layer.feather / 2.5), layer.feather * 0.3);
    return [mark("feather", ...insetRings(outline, layer.feather).map(closedPath)), mark("hatch", ticks)];
  }
  const bottom = Math.max(...outline.map(({ y }) => y));
  const edge = (y: number): readonly PicturePoint[] => {
    const half = outline.slice(0, outline.length / 2);
    const below = half.findIndex((point) => point.y >= y);
    const [from, to] = [half[Math.max(0, below - 1)] ?? at(0, y), half[below] ?? at(0, y)];
    const { x } = between(from, to, to.y === from.y ? 0 : (y - from.y) / (to.y - from.y));
    return [at(-x, y), at(x, y)];
  };
  return [mark("feather", openPath(edge(layer.feather)), openPath(edge(bottom - layer.feather)))];
}

/** Places a step apart along a closed outline, the same way round. */
function evenSteps(outline: readonly PicturePoint[], step: number): readonly PicturePoint[] {
  const ring = [...outline, ...outline.slice(0, 1)];
  let carry = 0;
  return ring.slice(1).flatMap((to, i) => {
    const from = ring[i] ?? to;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const count = Math.floor((carry + length) / step);
    const places = Array.from({ length: count }, (_, k) => between(from, to, ((k + 1) * step - carry) / length));
    carry += length - count * step;
    return places;
  });
}

/** Short strokes from the edge inward, the sign for batting pulled thin. The ring runs with the piece on its right. */
export function ticksInward(ring: readonly PicturePoint[], reach: number): string {
  return ring
    .slice(1)
    .map((to, i) => {
      const from = ring[i] ?? to;
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      const [x, y] = length === 0 ? [0, 0] : [-(to.y - from.y) / length, (to.x - from.x) / length];
      return segment(to, at(to.x + x * reach, to.y + y * reach));
    })
    .join("");
}

/**
 * The line a given distance inside a closed outline: every place on it lies just that far from the nearest edge. An
 * outline too narrow for the distance gives no line, and one with a waist may give several. The line is found on a grid of
 * about sixty steps along the longer side, finer than a pencil line at the size it is drawn.
 */
export function insetRings(outline: readonly PicturePoint[], distance: number): readonly (readonly PicturePoint[])[] {
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const step = Math.max(width, height) / 60;
  if (!(step > 0)) return [];
  const values = Array.from({ length: Math.ceil(height / step) + 1 }, (_, row) =>
    Float64Array.from({ length: Math.ceil(width / step) + 1 }, (_unused, column) =>
      depthInside(outline, at(left + column * step, top + row * step)),
    ),
  );
  return contourRings(values, distance).map((ring) => ring.map(({ x, y }) => at(left + x * step, top + y * step)));
}

/** How far a place lies inside the outline, negative outside. */
function depthInside(outline: readonly PicturePoint[], place: PicturePoint): number {
  let inside = false;
  let nearest = Number.POSITIVE_INFINITY;
  outline.forEach((to, i) => {
    const from = outline.at(i - 1) ?? to;
    if (
      from.y > place.y !== to.y > place.y &&
      place.x < from.x + ((place.y - from.y) / (to.y - from.y)) * (to.x - from.x)
    )
      inside = !inside;
    const [stepX, stepY] = [to.x - from.x, to.y - from.y];
    const square = stepX * stepX + stepY * stepY;
    const share =
      square === 0 ? 0 : Math.min(1, Math.max(0, ((place.x - from.x) * stepX + (place.y - from.y) * stepY) / square));
    nearest = Math.min(nearest, (place.x - from.x - share * stepX) ** 2 + (place.y - from.y - share * stepY) ** 2);
  });
  return inside ? Math.sqrt(nearest) : -Math.sqrt(nearest);
}

/**
 * The closed lines round all places of a grid whose value is at least the threshold (marching squares, Lorensen and
 * Cline 1987 in the plane). A point's x is its column and y its row, with fractions; beyond the grid nothing reaches the
 * threshold, so a line that meets the border runs along it. A grid without such places gives no lines. Where two high
 * corners of a cell face each other across two low ones they are kept apart.
 */
export function contourRings(values: readonly Float64Array[], threshold: number): readonly (readonly PicturePoint[])[] {
  const rows = values.length;
  const columns = values[0]?.length ?? 0;
  const high = (column: number, row: number): boolean =>
    (values[row]?.[column] ?? Number.NEGATIVE_INFINITY) >= threshold;
  const crossing = (column: number, row: number, toColumn: number, toRow: number): PicturePoint => {
    const [from, to] = [values[row]?.[column], values[toRow]?.[toColumn]];
    if (from === undefined) return at(toColumn, toRow);
    if (to === undefined) return at(column, row);
    const share = (threshold - from) / (to - from);
    return at(column + (toColumn - column) * share, row + (toRow - row) * share);
  };

  // Each step crosses one cell and is kept by the cell side on which it starts; high ground lies on its right.
  const steps = new Map<string, { readonly to: string; readonly point: PicturePoint }>();
  for (let row = -1; row < rows; row++) {
    for (let column = -1; column < columns; column++) {
      const corners = cellCorners.map(([dx, dy]) => [column + dx, row + dy] as const);
      const isHigh = corners.map(([x, y]) => high(x, y));
      for (let i = 0; i < 4; i++) {
        // A step starts on the side where the corner turns from low to high and ends on the next side where it turns back.
        const next = (i + 1) % 4;
        if (isHigh[i] || !isHigh[next]) continue;
        let end = next;
        while (isHigh[(end + 1) % 4]) end = (end + 1) % 4;
        const [a, b] = [corners[i], corners[next]];
        const [c, d] = [corners[end], corners[(end + 1) % 4]];
        if (!a || !b || !c || !d) continue;
        steps.set(sideKey(a, b), { to: sideKey(c, d), point: crossing(...a, ...b) });
      }
    }
  }
  return linked(steps);
}

const cellCorners = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
] as const;

/** The same name from both cells that share a side. */
const sideKey = (a: readonly [number, number], b: readonly [number, number]): string =>
  a[0] < b[0] || a[1] < b[1] ? `${String(a)};${String(b)}` : `${String(b)};${String(a)}`;

function linked(
  steps: Map<string, { readonly to: string; readonly point: PicturePoint }>,
): readonly (readonly PicturePoint[])[] {
  const rings: PicturePoint[][] = [];
  for (let start = steps.keys().next(); !start.done; start = steps.keys().next()) {
    const ring: PicturePoint[] = [];
    let key = start.value;
    for (let step = steps.get(key); step !== undefined; step = steps.get(key)) {
      ring.push(step.point);
      steps.delete(key);
      key = step.to;
    }
    rings.push(ring);
  }
  return rings;
}
