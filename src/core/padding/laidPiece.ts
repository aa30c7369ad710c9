import type { Anchor, Layer } from "./layer";
import type { PieceKind, PieceZone } from "./piece";

/** A piece with its layers drawn on the bare form, before it has a name, an order and a cut. */
export interface LaidPiece {
  readonly kind: PieceKind;
  readonly zone: PieceZone;
  readonly anchor: Anchor;
  readonly layers: readonly Layer[];
}
