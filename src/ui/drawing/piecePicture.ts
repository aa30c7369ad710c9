import type { Layer } from "../../core/padding/layer";
import type { LayerCut } from "../../core/padding/layerCut";
import type { Piece } from "../../core/padding/piece";
import type { LengthWriter } from "./lengthWriter";

/**
 * One layer of a piece as it is cut, lying flat, top edge up and its outer side towards the reader. On the page the wearer's left
 * is on the right, as on a form that faces the reader.
 */
export interface PiecePicture {
  readonly piece: Piece;
  readonly layer: Layer;
  readonly cut: LayerCut;
  readonly title: string;
  readonly lengths: LengthWriter;
  /** A screen is smaller than a sheet and farther off: its words are larger beside the piece. On paper if left out. */
  readonly shownOn?: ShownOn;
}

/** A small card on paper, a large drawing on paper, or a screen. */
export type ShownOn = "paper" | "largePaper" | "screen";

/** How many lines of words would cover the whole picture across, and the piece in it down. */
export const linesOver: { readonly [place in ShownOn]: { readonly across: number; readonly down: number } } = {
  paper: { across: 28, down: 7.5 },
  largePaper: { across: 36, down: 12 },
  screen: { across: 24, down: 11 },
};
