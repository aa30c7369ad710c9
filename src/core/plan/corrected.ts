import type { Layer, LayerRow } from "../padding/layer";
import type { Piece } from "../padding/piece";
import { mm } from "../units";
import type { Basis } from "./basis";
import { type Correction, mostTrimmed } from "./corrections";

/** The pinned pieces once corrections are carried out: peeled pieces are gone, trimmed ones are narrower around their level. */
export function corrected(pinned: readonly Piece[], what: readonly Correction[], { depths }: Basis): readonly Piece[] {
  return what.reduce<readonly Piece[]>((pieces, { pieceId, level, how }) => {
    if (how.kind === "peel") return pieces.filter((piece) => piece.id !== pieceId);
    if (how.kind === "pullThin") return pieces;
    return pieces.map((piece) => (piece.id === pieceId ? trimmed(piece, depths[level], how.eachSide) : piece));
  }, pinned);
}

/** A trim is cut in a smooth curve that has run out this far (mm) above and below its level. */
const trimReach = 60;

/** A piece narrowed by so much on each side at a depth, running out smoothly; nowhere is more than half of a side taken. */
export function trimmed(piece: Piece, depth: number, eachSide: number): Piece {
  const narrower = (layer: Layer): Layer => ({
    ...layer,
    rows: layer.rows.map((row): LayerRow => {
      const near = Math.max(0, 1 - Math.abs(row.depthBelowNape - depth) / trimReach);
      const taken = Math.min(eachSide * near, mostTrimmed * (row.end - row.start));
      return { ...row, start: mm(row.start + taken), end: mm(row.end - taken) };
    }),
  });
  return { ...piece, layers: piece.layers.map((layer) => (layer.wrap ? layer : narrower(layer))) };
}
