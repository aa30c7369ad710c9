import { type CardPage, cardPages } from "../../../app/print/cardPages";
import type { PlannedPiece } from "../../../core/plan/plan";
import type { LengthWriter } from "../../../text/lengthWriter";
import { layerPictures, pieceScene, type ShownOn } from "../../drawing/pieceScene";
import type { Scene } from "../../drawing/scene";

/** One layer to cut on the sheets of cut drawings, with its words. */
export interface CutCard {
  readonly piece: PlannedPiece;
  readonly name: string;
  readonly words: string;
  readonly scene: Scene;
}

/** A card for every layer of a piece; the words stand with the first. */
export const cutCards = (
  piece: PlannedPiece,
  name: string,
  words: string,
  lengths: LengthWriter,
  shownOn: ShownOn,
): readonly CutCard[] =>
  layerPictures(piece, name, lengths, shownOn).map((picture, i) => ({
    piece,
    name: picture.title,
    words: i === 0 ? words : "",
    scene: pieceScene(picture),
  }));

/** The large drawings lie below each other, each with its words beside it; the first page has the test square as well. */
export const cutPages = (cards: readonly CutCard[]): readonly CardPage<CutCard>[] =>
  cardPages([{ heading: null, cards }], { heightOf: largeHeight, first: 470, later: 665, heading: 0, abreast: 1 });

/** Points: the drawing at the width it has on Letter, with the edges of its card and the gap below. */
const largeHeight = ({ scene: { frame } }: CutCard): number =>
  Math.max(leastLarge, (largeWidth * frame.height) / frame.width) + 22;

/** 120 mm, as the style sheet has it. */
const largeWidth = 340;
/** Name, what to cut and where it goes take seven lines beside a drawing. */
const leastLarge = 98;
