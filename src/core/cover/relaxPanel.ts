import { type PanelMesh, pointsPerRow } from "./panelMesh";
import type { PanelShape } from "./panelShape";

/** How much the lengths count: those that seams and girths are made of far more than the rest, which may strain. */
const weights = { kept: 30, inner: 1, diagonal: 0.5 } as const;

const sweeps = 60;

/** A length between two points of the panel that the cloth should keep. */
interface Tie {
  readonly to: number;
  readonly length: number;
  readonly weight: number;
}

/**
 * The panel with its points moved so that the lengths between neighbors are those on the surface as nearly as they can be
 * (least squares): in turn each point goes to the weighted mean of where its neighbors want it, which never makes the sum
 * larger (stress majorization, Gansner, Koren and North, Graph Drawing 2004, 239-250; cited from memory). The sweeps go down and up by turns.
 */
export function relaxPanel(shape: PanelShape, mesh: PanelMesh): PanelShape {
  const points = shape.points.slice();
  const ties = tiesOf(mesh);
  const order = ties.map((_, point) => point);
  const upward = order.toReversed();
  for (let sweep = 0; sweep < sweeps; sweep++)
    for (const point of sweep % 2 === 0 ? order : upward) settle(points, point, ties[point] as readonly Tie[]);
  return { rows: shape.rows, points };
}

function settle(points: Float64Array, point: number, ties: readonly Tie[]): void {
  const [x, y] = [points[2 * point] as number, points[2 * point + 1] as number];
  let [sumX, sumY, sum] = [0, 0, 0];
  for (const { to, length, weight } of ties) {
    const [atX, atY] = [points[2 * to] as number, points[2 * to + 1] as number];
    const apart = Math.sqrt((x - atX) * (x - atX) + (y - atY) * (y - atY)) || 1;
    sumX += weight * (atX + (length * (x - atX)) / apart);
    sumY += weight * (atY + (length * (y - atY)) / apart);
    sum += weight;
  }
  points[2 * point] = sumX / sum;
  points[2 * point + 1] = sumY / sum;
}

function tiesOf({ widths, steps, falling, rising }: PanelMesh): readonly (readonly Tie[])[] {
  const ties = Array.from({ length: widths.length * pointsPerRow }, (): Tie[] => []);
  const tie = (one: number, other: number, length: number, weight: number) => {
    (ties[one] as Tie[]).push({ to: other, length, weight });
    (ties[other] as Tie[]).push({ to: one, length, weight });
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
  return ties;
}
