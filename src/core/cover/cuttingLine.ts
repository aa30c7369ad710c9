import type { CoverSeamName } from "./coverPanels";
import type { CoverPanel } from "./fittedCover";
import { pointsPerRow } from "./panelMesh";
import { type FlatPoint, panelEdge, panelRow } from "./panelShape";

/** How much cloth stands beyond the sewing line along each edge of a panel (mm). */
export interface Allowances {
  readonly seams: { readonly [seam in CoverSeamName]: number };
  readonly top: number;
  readonly bottom: number;
}

/**
 * 10 mm (3/8 in) where a seam only joins; 25 mm (1 in) where the cover is taken in or let out on the form, at the sides; where
 * it opens, at center back; and at the hem. Common practice, no source.
 */
const [joined, fitted] = [10, 25];
export const usualAllowances: Allowances = {
  seams: {
    centerBack: fitted,
    rightBackPrincess: joined,
    rightSide: fitted,
    rightSideFrontSeam: joined,
    rightFrontPrincess: joined,
    centerFront: joined,
    leftFrontPrincess: joined,
    leftSideFrontSeam: joined,
    leftSide: fitted,
    leftBackPrincess: joined,
  },
  top: joined,
  bottom: fitted,
};

/**
 * The line along which a panel is cut: its four edges moved out, each by its own allowance, and joined in mitered corners. A
 * closed line in the panel's own frame (mm), clockwise from the upper end of the first seam, not repeated at the end.
 */
export function cuttingLine(
  { shape, seams }: Pick<CoverPanel, "shape" | "seams">,
  allowances: Allowances,
): readonly FlatPoint[] {
  const edges = [
    movedOut(panelRow(shape, 0), allowances.top),
    movedOut(panelEdge(shape, pointsPerRow - 1), allowances.seams[seams.last]),
    movedOut(panelRow(shape, shape.rows - 1).toReversed(), allowances.bottom),
    movedOut(panelEdge(shape, 0).toReversed(), allowances.seams[seams.first]),
  ];
  return edges.flatMap((edge, i) => {
    const before = edges[(i + 3) % 4] as readonly FlatPoint[];
    return [corner(before, edge), ...edge.slice(1, -1)];
  });
}

/** A drawn line moved to its left: outward, since an outline runs clockwise. Each bend is mitered. */
function movedOut(line: readonly FlatPoint[], by: number): readonly FlatPoint[] {
  return line.map((point, i) => {
    const [before, after] = [line[i - 1] ?? point, line[i + 1] ?? point];
    const [leave, arrive] = [normal(before, point), normal(point, after)];
    const [x, y] = [leave.x + arrive.x, leave.y + arrive.y];
    const onOne = i === 0 || i === line.length - 1 ? 1 : (x * x + y * y) / 2;
    return { x: point.x + (by * x) / onOne, y: point.y + (by * y) / onOne };
  });
}

/** The unit normal to the left of the way from one point to another; none where they are one. */
function normal(from: FlatPoint, to: FlatPoint): FlatPoint {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  return length === 0 ? { x: 0, y: 0 } : { x: -dy / length, y: dx / length };
}

/** Where the last stretch of one line and the first of the next meet, carried on as far as they must. */
function corner(one: readonly FlatPoint[], next: readonly FlatPoint[]): FlatPoint {
  const [a, b] = [one[one.length - 2] as FlatPoint, one[one.length - 1] as FlatPoint];
  const [c, d] = [next[0] as FlatPoint, next[1] as FlatPoint];
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const share = ((c.x - a.x) * vy - (c.y - a.y) * vx) / (ux * vy - uy * vx);
  return { x: a.x + share * ux, y: a.y + share * uy };
}
