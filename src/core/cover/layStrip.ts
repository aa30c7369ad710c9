import { root } from "../numerics/root";
import { type PanelMesh, pointsPerRow } from "./panelMesh";
import { flatDistance, type PanelShape } from "./panelShape";
import { type RowEnds, rowBelow, type StepLengths } from "./panelStep";

/**
 * A panel laid flat for a start, step after step as four-sided pieces: both edges and both widths of each are exact between
 * straight rows. Its one free angle is where both diagonals miss their way over the surface by as much, which is the
 * least sum of squares for a piece that shears. Then the rows are bowed as they would be on a cone that widens as
 * the panel does: relaxing alone is slow to bow them.
 */
export function layStrip(mesh: PanelMesh): PanelShape {
  const { widths, steps, fallingAcross, risingAcross } = mesh;
  const points = new Float64Array(2 * widths.length * pointsPerRow);
  let ends: RowEnds = { first: { x: 0, y: 0 }, last: { x: widths[0] as number, y: 0 } };
  drawRow(points, 0, ends, sag(mesh, 0));
  for (const [i, width] of widths.slice(1).entries()) {
    ends = nextEnds(ends, {
      width,
      first: (steps[0] as Float64Array)[i] as number,
      last: (steps[pointsPerRow - 1] as Float64Array)[i] as number,
      falling: fallingAcross[i] as number,
      rising: risingAcross[i] as number,
    });
    drawRow(points, i + 1, ends, sag(mesh, i + 1));
  }
  return { rows: widths.length, points };
}

interface Step extends StepLengths {
  readonly falling: number;
  readonly rising: number;
}

/** The farthest an edge's step leans from square to the row above it. */
const mostLean = 1.2;

/** Diagonals are balanced to a thousandth of a millimeter: what is left adds up over the rows. */
const balancePrecision = 0.001;

function nextEnds(above: RowEnds, step: Step): RowEnds {
  const unbalanced = (lean: number): number => {
    const { first, last } = rowBelow(above, step, lean);
    return flatDistance(above.first, last) - step.falling - (flatDistance(first, above.last) - step.rising);
  };
  const found = root(unbalanced, { from: -mostLean, to: mostLean, precision: balancePrecision });
  return rowBelow(above, step, found.kind === "converged" ? found.value : found.nearest);
}

/**
 * How far the middle of a row hangs below its ends (mm), on a cone that widens from the top row to the bottom row as the panel
 * does: there a row turns through its growth per length of the way down, and an arc of width w that turns through an angle a sags by w · a / 8.
 */
function sag({ widths, steps }: PanelMesh, row: number): number {
  const way = (steps[(pointsPerRow - 1) / 2] as Float64Array).reduce((sum, step) => sum + step, 0);
  const turned = ((widths[widths.length - 1] as number) - (widths[0] as number)) / way;
  return ((widths[row] as number) * turned) / 8;
}

function drawRow(points: Float64Array, row: number, { first, last }: RowEnds, sagged: number): void {
  const [runX, runY] = [last.x - first.x, last.y - first.y];
  const chord = flatDistance(first, last);
  for (let point = 0; point < pointsPerRow; point++) {
    const share = point / (pointsPerRow - 1);
    const off = (4 * share * (1 - share) * sagged) / chord;
    const at = 2 * (row * pointsPerRow + point);
    points[at] = first.x + share * runX + off * runY;
    points[at + 1] = first.y + share * runY - off * runX;
  }
}
