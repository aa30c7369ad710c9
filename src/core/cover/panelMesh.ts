import { tautPointAt } from "../surface/tautSection";
import type { CoverRow } from "./coverRows";

/** Points of a panel in each of its rows, both edges included. */
export const pointsPerRow = 7;

/**
 * One panel as it lies on the surface: how long everything is that cloth must keep (mm). A row's width is the tape's way
 * between its seams; steps are straight through space from a point of a row to the same point of the row below, the first
 * and the last along the panel's two edges. All lists run from the top row down, points from the first seam to the last.
 */
export interface PanelMesh {
  readonly widths: Float64Array;
  /** One for each point, and step after step: `steps[point][row]` leads from the row to the one below. */
  readonly steps: readonly Float64Array[];
  /** Across each cell, down towards the last seam, and down towards the first: `[cell][row]`. */
  readonly falling: readonly Float64Array[];
  readonly rising: readonly Float64Array[];
  /** Over the surface from edge to edge of a step: from the first seam above to the last below, and the other way. */
  readonly fallingAcross: Float64Array;
  readonly risingAcross: Float64Array;
}

/** The panel as a mirror shows it: its first seam is its last. */
export const mirroredMesh = (mesh: PanelMesh): PanelMesh => ({
  widths: mesh.widths,
  steps: mesh.steps.toReversed(),
  falling: mesh.rising.toReversed(),
  rising: mesh.falling.toReversed(),
  fallingAcross: mesh.risingAcross,
  risingAcross: mesh.fallingAcross,
});

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly depth: number;
}

/** The panel between the seams of the given number and the next. */
export function panelMesh(rows: readonly CoverRow[], first: number): PanelMesh {
  const spots = rows.map((row) => rowSpots(row, first));
  const below = spots.slice(1);
  const lengths = (from: (row: number) => number): Float64Array => Float64Array.from(below, (_, row) => from(row));
  const spot = (row: number, point: number) => (spots[row] as readonly Spot[])[point] as Spot;
  const cells = Array.from({ length: pointsPerRow - 1 }, (_, cell) => cell);
  return {
    widths: Float64Array.from(rows, ({ seams }) => (seams[first + 1] as number) - (seams[first] as number)),
    steps: [...cells, pointsPerRow - 1].map((point) => lengths((row) => way(spot(row, point), spot(row + 1, point)))),
    falling: cells.map((cell) => lengths((row) => way(spot(row, cell), spot(row + 1, cell + 1)))),
    rising: cells.map((cell) => lengths((row) => way(spot(row, cell + 1), spot(row + 1, cell)))),
    fallingAcross: lengths((row) =>
      wayAcross((point, share) => between(spot(row, point), spot(row + 1, point), share)),
    ),
    risingAcross: lengths((row) => wayAcross((point, share) => between(spot(row + 1, point), spot(row, point), share))),
  };
}

function rowSpots({ tape, seams, depthBelowNape: depth }: CoverRow, first: number): readonly Spot[] {
  const [from, to] = [seams[first] as number, seams[first + 1] as number];
  return Array.from({ length: pointsPerRow }, (_, point) => ({
    ...tautPointAt(tape, from + ((to - from) * point) / (pointsPerRow - 1)),
    depth,
  }));
}

const way = (from: Spot, to: Spot): number => Math.hypot(to.x - from.x, to.y - from.y, to.depth - from.depth);

const between = (from: Spot, to: Spot, share: number): Spot => ({
  x: from.x + share * (to.x - from.x),
  y: from.y + share * (to.y - from.y),
  depth: from.depth + share * (to.depth - from.depth),
});

/** From one corner of a step to the opposite one, point by point, each a share further down (or up). */
function wayAcross(place: (point: number, share: number) => Spot): number {
  let length = 0;
  for (let point = 1; point < pointsPerRow; point++)
    length += way(place(point - 1, (point - 1) / (pointsPerRow - 1)), place(point, point / (pointsPerRow - 1)));
  return length;
}
