import type { PlannedPiece } from "../../core/plan/plan";
import type { LengthWriter } from "../drawing/lengthWriter";
import { pieceScene } from "../drawing/pieceScene";
import type { Scene } from "../drawing/scene";
import { type CardPage, cardPages } from "./cardPages";

/** One piece on the sheets of cut drawings, with its words. */
export interface CutCard {
  readonly piece: PlannedPiece;
  readonly name: string;
  readonly words: string;
  readonly scene: Scene;
}

export const cutCard = (piece: PlannedPiece, name: string, words: string, lengths: LengthWriter): CutCard => ({
  piece,
  name,
  words,
  scene: pieceScene({ piece, title: name, lengths }),
});

export const cutPages = (cards: readonly CutCard[]): readonly CardPage<CutCard>[] =>
  cardPages([{ heading: null, cards }], { heightOf: cutCardHeight, first: 480, later: 665, heading: 0 });

/** Points: the drawing at the width of its card or as high as it may get, the name, the words, and the gap below. */
function cutCardHeight({ scene: { frame }, words }: CutCard): number {
  const drawing = Math.min(mostDrawing, (cardWidth * frame.height) / frame.width);
  return drawing + 40 + lineHeight * Math.ceil(words.length / lettersAcross);
}

const cardWidth = 250;
/** 62 mm, as the style sheet has it. */
const mostDrawing = 176;
const lineHeight = 9.6;
const lettersAcross = 58;
