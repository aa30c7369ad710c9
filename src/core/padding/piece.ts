import type { BattingRole } from "../material";
import type { Millimetres } from "../units";

/**
 * Where on the form a piece goes. Rounds go all the way round; front, back and side pieces are centred on centre
 * front, centre back or a side seam; cup pieces are the discs that fill the bra at each apex.
 */
export const pieceZones = ["round", "front", "back", "leftSide", "rightSide", "leftCup", "rightCup"] as const;
export type PieceZone = (typeof pieceZones)[number];

/**
 * One height of a piece's outline on the BARE form: start and end are signed distances (mm) along the bare form's surface
 * from the piece's anchor at that drop below the nape, positive the way that leads from center front to the wearer's
 * left (at center back that is to the right); a round runs from minus half to plus half the girth.
 */
export interface PieceRow {
  readonly drop: Millimetres;
  readonly start: Millimetres;
  readonly end: Millimetres;
}

/**
 * Where the rows of a piece are counted from. What is centered on center back is counted from there: counted from center
 * front its middle would lean, because half the girth changes from row to row. Left out, it is center front.
 */
export type PieceAnchor = "centerBack";

/**
 * The size to cut, taken on the surface the piece lies on (the form plus every piece beneath it), lying flat.
 * A strip is a round: its length with butted ends, and its width (top to bottom). A panel has widths to each side of its
 * centre line at distances below its top edge. A disc is one cup filler.
 */
export type PieceCut =
  | {
      readonly shape: "strip";
      readonly length: Millimetres;
      readonly width: Millimetres;
      readonly widths: readonly CutWidth[];
    }
  | { readonly shape: "panel"; readonly height: Millimetres; readonly widths: readonly CutWidth[] }
  | { readonly shape: "disc"; readonly diameter: Millimetres };

/** Width at a distance below the top edge: how far the outline lies to the wearer's left and right of the centre line. */
export interface CutWidth {
  readonly belowTop: Millimetres;
  readonly left: Millimetres;
  readonly right: Millimetres;
}

/**
 * One piece of batting. Thickness is the whole piece, all plies, compressed under a snug tape: zero on the outline and
 * rising linearly to full over the feather width inward. Order is the order of pinning, from 1.
 */
export interface Piece {
  readonly id: string;
  readonly order: number;
  readonly zone: PieceZone;
  readonly batting: BattingRole;
  readonly plies: number;
  readonly thickness: Millimetres;
  readonly feather: Millimetres;
  readonly anchor?: PieceAnchor;
  readonly rows: readonly PieceRow[];
  readonly cut: PieceCut;
}
