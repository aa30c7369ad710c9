import { allowanceLine } from "../pattern/allowanceLine";
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
  return allowanceLine([
    { line: panelRow(shape, 0), by: allowances.top },
    { line: panelEdge(shape, pointsPerRow - 1), by: allowances.seams[seams.last] },
    { line: panelRow(shape, shape.rows - 1).toReversed(), by: allowances.bottom },
    { line: panelEdge(shape, 0).toReversed(), by: allowances.seams[seams.first] },
  ]);
}
