import { pointsPerRow } from "./panelMesh";

/**
 * A panel lying flat, as cloth is cut: rows of points from the top row down, each from the first seam to the last, as flat
 * coordinates [x, y, …] in millimeters, x to the right and y up, seen from outside.
 */
export interface PanelShape {
  readonly rows: number;
  readonly points: Float64Array;
}

/** The shape drawn out across and along the grain, by a factor each. */
export const scaledShape = ({ rows, points }: PanelShape, across: number, along: number): PanelShape => ({
  rows,
  points: points.map((value, i) => value * (i % 2 === 0 ? across : along)),
});

/** The shape as a mirror shows it. */
export function mirroredShape({ rows, points }: PanelShape): PanelShape {
  const mirrored = new Float64Array(points.length);
  for (let row = 0; row < rows; row++) {
    for (let point = 0; point < pointsPerRow; point++) {
      const [from, to] = [2 * (row * pointsPerRow + point), 2 * (row * pointsPerRow + pointsPerRow - 1 - point)];
      mirrored[to] = -(points[from] as number);
      mirrored[to + 1] = points[from + 1] as number;
    }
  }
  return { rows, points: mirrored };
}

export interface FlatPoint {
  readonly x: number;
  readonly y: number;
}

export const panelPoint = ({ points }: PanelShape, row: number, point: number): FlatPoint => {
  const at = 2 * (row * pointsPerRow + point);
  return { x: points[at] as number, y: points[at + 1] as number };
};

/** A row as a drawn line from seam to seam. */
export const panelRow = (shape: PanelShape, row: number): readonly FlatPoint[] =>
  Array.from({ length: pointsPerRow }, (_, point) => panelPoint(shape, row, point));

/** An edge as a drawn line from the top row down: point 0 is along the first seam, the last point along the last. */
export const panelEdge = (shape: PanelShape, point: number): readonly FlatPoint[] =>
  Array.from({ length: shape.rows }, (_, row) => panelPoint(shape, row, point));

export const flatDistance = (from: FlatPoint, to: FlatPoint): number => Math.hypot(to.x - from.x, to.y - from.y);

/** The length of a drawn line (mm). */
export const lineLength = (points: readonly FlatPoint[]): number =>
  points.reduce((sum, point, i) => sum + (i === 0 ? 0 : flatDistance(points[i - 1] as FlatPoint, point)), 0);

/** The closed outline: along the top row, down the last seam, back along the bottom row and up the first seam. */
export const panelOutline = (shape: PanelShape): readonly FlatPoint[] => [
  ...panelRow(shape, 0),
  ...panelEdge(shape, pointsPerRow - 1).slice(1, -1),
  ...panelRow(shape, shape.rows - 1).toReversed(),
  ...panelEdge(shape, 0).slice(1, -1).toReversed(),
];
