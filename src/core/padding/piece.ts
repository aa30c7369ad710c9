import type { LevelName } from "../body/vocabulary";
import type { BattingRole } from "../material";
import type { Anchor, Layer, LayerRow } from "./layer";
import type { LayerCut } from "./layerCut";

/** What a piece is for the hand that cuts and pins it. */
export const pieceKinds = ["wrap", "panel", "tuning", "cup", "bought", "outerWrap"] as const;
export type PieceKind = (typeof pieceKinds)[number];

/** Which part of the form a piece covers: all around it, the front or back or one side of either, over a side line, or a cup. */
export const pieceZones = [
  "around",
  "front",
  "back",
  "leftFront",
  "rightFront",
  "leftBack",
  "rightBack",
  "leftSide",
  "rightSide",
  "leftCup",
  "rightCup",
] as const;
export type PieceZone = (typeof pieceZones)[number];

/**
 * A piece's name for good: the level it lies over most, and a number from the second of the same kind, zone and level on
 * (the first has 1). Once cut, a piece keeps it through every new plan.
 */
export interface PieceName {
  readonly kind: PieceKind;
  readonly zone: PieceZone;
  readonly level: LevelName;
  readonly number: number;
}

/**
 * One thing to cut and pin: layers from the form outwards, each in its own outline. Order is the order of pinning, from 1. Left and
 * right cup pads share a pair and count as one piece.
 */
export interface Piece extends PieceName {
  readonly id: string;
  readonly order: number;
  readonly pair: string | null;
  readonly anchor: Anchor;
  readonly layers: readonly Layer[];
  /** One for each layer, from the form outwards. */
  readonly cut: readonly LayerCut[];
}

/** The name as an id: the same name is the same piece, for ever. */
export const pieceId = ({ kind, zone, level, number }: PieceName): string => `${kind}-${zone}-${level}-${number}`;

/** Which batting a piece is cut from: all its layers are of one. */
export const pieceBatting = ({ layers }: Pick<Piece, "layers">): BattingRole => layers[0]?.batting ?? "building";

/** The one batting every piece is cut from; null where both are used, or none. */
export function onlyBatting(pieces: readonly Pick<Piece, "layers">[]): BattingRole | null {
  const [first, ...others] = pieces.map(pieceBatting);
  return first !== undefined && others.every((batting) => batting === first) ? first : null;
}

/** From the highest top edge to the lowest bottom edge of a piece's layers (depths below the nape). */
export function pieceExtent({ layers }: Pick<Piece, "layers">): { readonly top: number; readonly bottom: number } {
  return {
    top: Math.min(...layers.map(({ rows }) => (rows[0] as LayerRow).depthBelowNape)),
    bottom: Math.max(...layers.map(({ rows }) => (rows[rows.length - 1] as LayerRow).depthBelowNape)),
  };
}

/** The outermost layer of a piece, which is its largest and the one that is seen. */
export const outermostLayer = ({ layers }: Pick<Piece, "layers">): Layer => layers[layers.length - 1] as Layer;

/** Whether a piece is built before the tape decides the rest: all but what tunes and the wrap over everything. */
export const isStructure = ({ kind }: Pick<Piece, "kind">): boolean => kind !== "tuning" && kind !== "outerWrap";

/** Whether lines are carried out over a piece once it is pinned: not over what lies in a cup or under another layer. */
export const coversLines = ({ kind }: Pick<Piece, "kind">): boolean => kind !== "cup" && kind !== "tuning";
