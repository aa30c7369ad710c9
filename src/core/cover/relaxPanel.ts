import { bandedSolver } from "../numerics/bandedSystem";
import { type PanelMesh, pointsPerRow } from "./panelMesh";
import type { PanelShape } from "./panelShape";

/** How much the lengths count: those that seams and girths are made of far more than the rest, which may strain. */
const weights = { kept: 30, inner: 1, diagonal: 0.15 } as const;

/** The lengths between neighboring points that cloth should keep, in lists of one order: there are thousands, asked for many times. */
interface Ties {
  readonly from: Uint16Array;
  readonly to: Uint16Array;
  readonly length: Float64Array;
  readonly weight: Float64Array;
}

/**
 * The panel with its points moved so that the lengths between neighbors are those on the surface as nearly as they can be
 * (least squares): all points go at once to where, taken together, their neighbors want them, which never makes the sum
 * larger (stress majorization: de Leeuw, Multivariate Behavioral Research 23, 1988; cited from memory). Neighbors are at most a row and a point
 * apart, so that each round is one banded system, factored once.
 */
export function relaxPanel(shape: PanelShape, mesh: PanelMesh, rounds = usualRounds): PanelShape {
  const count = shape.rows * pointsPerRow;
  const ties = tiesOf(mesh);
  const solve = bandedSolver({ size: count, band, entries: weightMatrix(count, ties) });
  let x = Float64Array.from({ length: count }, (_, i) => shape.points[2 * i] as number);
  let y = Float64Array.from({ length: count }, (_, i) => shape.points[2 * i + 1] as number);
  for (let round = 0; round < rounds; round++) {
    const wanted = wantedPlaces(ties, x, y);
    solve(wanted.x);
    solve(wanted.y);
    const far = round < rounds - settled ? 2 : 1;
    x = wanted.x.map((value, i) => (x[i] as number) + far * (value - (x[i] as number)));
    y = wanted.y.map((value, i) => (y[i] as number) + far * (value - (y[i] as number)));
  }
  return {
    rows: shape.rows,
    points: Float64Array.from({ length: 2 * count }, (_, i) => (i % 2 === 0 ? x : y)[i >> 1] as number),
  };
}

/**
 * Every round goes twice as far as it is asked to, which is still safe and takes half as many (de Leeuw and Heiser, in Multivariate
 * Analysis V, 1980, 501-522; cited from memory); the last ones do not.
 */
const usualRounds = 60;
const settled = 3;

/** The farthest neighbor in the order of points: the next of the row below. */
const band = pointsPerRow + 1;

/** The weights as the matrix that the places of all points are solved with; the first point is held where it was. */
function weightMatrix(count: number, { from, to, weight }: Ties): Float64Array {
  const entries = new Float64Array(count * (band + 1));
  const add = (row: number, column: number, value: number) => {
    const at = row * (band + 1) + column - row + band;
    entries[at] = (entries[at] as number) + value;
  };
  for (let tie = 0; tie < weight.length; tie++) {
    const [one, other, value] = [from[tie] as number, to[tie] as number, weight[tie] as number];
    add(one, one, value);
    add(other, other, value);
    add(Math.max(one, other), Math.min(one, other), -value);
  }
  add(0, 0, 1);
  return entries;
}

type Coordinates = Float64Array<ArrayBuffer>;

function wantedPlaces(
  { from, to, length, weight }: Ties,
  x: Coordinates,
  y: Coordinates,
): { readonly x: Coordinates; readonly y: Coordinates } {
  const wanted = { x: new Float64Array(x.length), y: new Float64Array(y.length) };
  wanted.x[0] = x[0] as number;
  wanted.y[0] = y[0] as number;
  for (let tie = 0; tie < weight.length; tie++) {
    const one = from[tie] as number;
    const other = to[tie] as number;
    const dx = (x[one] as number) - (x[other] as number);
    const dy = (y[one] as number) - (y[other] as number);
    const pull = ((weight[tie] as number) * (length[tie] as number)) / (Math.sqrt(dx * dx + dy * dy) || 1);
    wanted.x[one] = (wanted.x[one] as number) + pull * dx;
    wanted.y[one] = (wanted.y[one] as number) + pull * dy;
    wanted.x[other] = (wanted.x[other] as number) - pull * dx;
    wanted.y[other] = (wanted.y[other] as number) - pull * dy;
  }
  return wanted;
}

function tiesOf({ widths, steps, falling, rising }: PanelMesh): Ties {
  const [from, to, lengths, weightsOf]: [number[], number[], number[], number[]] = [[], [], [], []];
  const tie = (one: number, other: number, length: number, weight: number) => {
    from.push(one);
    to.push(other);
    lengths.push(length);
    weightsOf.push(weight);
  };
  const last = pointsPerRow - 1;
  for (let row = 0; row < widths.length; row++) {
    const at = row * pointsPerRow;
    for (let cell = 0; cell < last; cell++) tie(at + cell, at + cell + 1, (widths[row] as number) / last, weights.kept);
    if (row === widths.length - 1) continue;
    for (let point = 0; point <= last; point++) {
      const length = (steps[point] as Float64Array)[row] as number;
      tie(at + point, at + pointsPerRow + point, length, point === 0 || point === last ? weights.kept : weights.inner);
    }
    for (let cell = 0; cell < last; cell++) {
      tie(at + cell, at + pointsPerRow + cell + 1, (falling[cell] as Float64Array)[row] as number, weights.diagonal);
      tie(at + cell + 1, at + pointsPerRow + cell, (rising[cell] as Float64Array)[row] as number, weights.diagonal);
    }
  }
  return {
    from: Uint16Array.from(from),
    to: Uint16Array.from(to),
    length: Float64Array.from(lengths),
    weight: Float64Array.from(weightsOf),
  };
}
