import { pointsPerRow } from "./panelMesh";
import { flatDistance, lineLength, panelPoint, panelRow, type PanelShape } from "./panelShape";
import { type RowEnds, rowBelow } from "./panelStep";

/** What a finished panel keeps (mm): the length of every row, and of every step along both edges, from the top down. */
export interface PanelLengths {
  readonly widths: Float64Array;
  readonly first: Float64Array;
  readonly last: Float64Array;
}

/** Times down and up: what is off is then spread over the whole panel, less than a tenth of a millimeter a step. */
const passes = 60;

/**
 * The panel with its rows and both edges at their lengths. A row keeps the bow it is drawn with: its chord is set to as
 * much of its length as it has, and its inner points go along. Each edge step and each chord is set to its length by
 * moving both its ends half the way, down the panel and up again, many times. What rest is left goes at the last, step by
 * step from the top row: each keeps its lean, and its three lengths are exact.
 */
export function finishPanel(shape: PanelShape, lengths: PanelLengths): PanelShape {
  const ends = endsOf(shape);
  const chords = lengths.widths.map((width, row) => {
    const line = panelRow(shape, row);
    return (
      (width * flatDistance(panelPoint(shape, row, 0), panelPoint(shape, row, pointsPerRow - 1))) / lineLength(line)
    );
  });
  const settle = (row: number): void => {
    setApart(ends, 4 * row, 4 * row + 2, chords[row] as number);
    if (row === shape.rows - 1) return;
    setApart(ends, 4 * row, 4 * row + 4, lengths.first[row] as number);
    setApart(ends, 4 * row + 2, 4 * row + 6, lengths.last[row] as number);
  };
  for (let pass = 0; pass < passes; pass++) {
    for (let row = 0; row < shape.rows; row++) settle(row);
    for (let row = shape.rows - 1; row >= 0; row--) settle(row);
  }
  return carriedAlong(shape, exactly(ends, chords, lengths));
}

function exactly(ends: Float64Array, chords: Float64Array, { first, last }: PanelLengths): Float64Array {
  const exact = ends.slice();
  let above = stretched(rowEnds(ends, 0), chords[0] as number);
  place(exact, 0, above);
  for (let row = 1; row < chords.length; row++) {
    const step = { width: chords[row] as number, first: first[row - 1] as number, last: last[row - 1] as number };
    above = rowBelow(above, step, leanBelow(rowEnds(ends, row - 1), rowEnds(ends, row)));
    place(exact, row, above);
  }
  return exact;
}

const rowEnds = (ends: Float64Array, row: number): RowEnds => ({
  first: { x: ends[4 * row] as number, y: ends[4 * row + 1] as number },
  last: { x: ends[4 * row + 2] as number, y: ends[4 * row + 3] as number },
});

const place = (ends: Float64Array, row: number, { first, last }: RowEnds): void =>
  ends.set([first.x, first.y, last.x, last.y], 4 * row);

function stretched({ first, last }: RowEnds, length: number): RowEnds {
  const share = length / flatDistance(first, last);
  return { first, last: { x: first.x + share * (last.x - first.x), y: first.y + share * (last.y - first.y) } };
}

/** How far the first edge's step leans to the right of square to the row above it (radians). */
function leanBelow(above: RowEnds, below: RowEnds): number {
  const [alongX, alongY] = [above.last.x - above.first.x, above.last.y - above.first.y];
  const [stepX, stepY] = [below.first.x - above.first.x, below.first.y - above.first.y];
  return Math.atan2(stepX * alongX + stepY * alongY, stepX * alongY - stepY * alongX);
}

/** The end points of all rows: first x, first y, last x, last y, and so on. */
function endsOf(shape: PanelShape): Float64Array {
  const ends = new Float64Array(4 * shape.rows);
  for (let row = 0; row < shape.rows; row++) {
    const [first, last] = [panelPoint(shape, row, 0), panelPoint(shape, row, pointsPerRow - 1)];
    ends.set([first.x, first.y, last.x, last.y], 4 * row);
  }
  return ends;
}

function setApart(ends: Float64Array, one: number, other: number, length: number): void {
  const dx = (ends[other] as number) - (ends[one] as number);
  const dy = (ends[other + 1] as number) - (ends[one + 1] as number);
  const apart = Math.sqrt(dx * dx + dy * dy);
  const half = apart === 0 ? 0 : (length - apart) / (2 * apart);
  ends[one] = (ends[one] as number) - half * dx;
  ends[one + 1] = (ends[one + 1] as number) - half * dy;
  ends[other] = (ends[other] as number) + half * dx;
  ends[other + 1] = (ends[other + 1] as number) + half * dy;
}

/** Each row turned and stretched to its new ends. */
function carriedAlong(shape: PanelShape, ends: Float64Array): PanelShape {
  const points = new Float64Array(shape.points.length);
  for (let row = 0; row < shape.rows; row++) {
    const [first, last] = [panelPoint(shape, row, 0), panelPoint(shape, row, pointsPerRow - 1)];
    const [toX, toY] = [ends[4 * row] as number, ends[4 * row + 1] as number];
    const [runX, runY] = [(ends[4 * row + 2] as number) - toX, (ends[4 * row + 3] as number) - toY];
    const [oldX, oldY] = [last.x - first.x, last.y - first.y];
    const square = oldX * oldX + oldY * oldY;
    const [scale, turn] = [(runX * oldX + runY * oldY) / square, (runY * oldX - runX * oldY) / square];
    for (let point = 0; point < pointsPerRow; point++) {
      const from = panelPoint(shape, row, point);
      const [dx, dy] = [from.x - first.x, from.y - first.y];
      const at = 2 * (row * pointsPerRow + point);
      points[at] = toX + scale * dx - turn * dy;
      points[at + 1] = toY + turn * dx + scale * dy;
    }
  }
  return { rows: shape.rows, points };
}
