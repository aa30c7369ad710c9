import type { BattingRole } from "../material";
import { type Millimetres, mm } from "../units";

/** Where a piece's distances along the surface begin: a line that is marked on the form from top to bottom. */
export const anchors = ["centerFront", "centerBack", "leftSide", "rightSide"] as const;
export type Anchor = (typeof anchors)[number];

/**
 * One height of a layer's outline: a depth below the nape, and signed distances (mm) along the BARE form's surface from the
 * piece's anchor, positive to the wearer's left. From a side line, which lies at the far left or right itself, they are
 * positive the way that leads from the right side over the front to the left side and on over the back.
 */
export interface LayerRow {
  readonly depthBelowNape: Millimetres;
  readonly start: Millimetres;
  readonly end: Millimetres;
}

/**
 * One thickness of batting in its own outline. Rows run from the top edge to the bottom edge, at most 20 mm apart, straight between
 * them. It is full within the outline but for the feather: thickness × min(1, distance to the outline / feather), the
 * distance taken in the plane of (distance from the anchor, depth below the nape). A feather of zero is cut square. A layer
 * that wraps goes all the way around: only its top and bottom are outline, and its rows run once around.
 */
export interface Layer {
  readonly batting: BattingRole;
  /** Compressed, under a snug tape. */
  readonly thickness: Millimetres;
  readonly feather: Millimetres;
  readonly wrap: boolean;
  readonly rows: readonly LayerRow[];
}

/** A layer's outline at a depth between its top and bottom edge, straight between its rows. */
export function rowAt(rows: readonly LayerRow[], depth: number): LayerRow {
  const below = Math.max(
    1,
    rows.findIndex((row) => row.depthBelowNape >= depth),
  );
  const [upper, lower] = [rows[below - 1] as LayerRow, rows[below] as LayerRow];
  const share = (depth - upper.depthBelowNape) / (lower.depthBelowNape - upper.depthBelowNape);
  return {
    depthBelowNape: mm(depth),
    start: mm(upper.start + share * (lower.start - upper.start)),
    end: mm(upper.end + share * (lower.end - upper.end)),
  };
}
