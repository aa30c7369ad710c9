import { at, type PicturePoint } from "./picturePoint";

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
