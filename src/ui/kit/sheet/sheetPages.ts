import type { PlannedPiece } from "../../../core/plan/plan";
import type { LengthWriter } from "../../../text/lengthWriter";
import { layerPictures, pieceScene, type ShownOn } from "../../drawing/pieceScene";
import type { Scene } from "../../drawing/scene";

/** The sheets that can be printed, in the order they come out. */
export const sheetKinds = ["lines", "padding", "smallCutting", "measuring", "cutting"] as const;
export type SheetKind = (typeof sheetKinds)[number];

/** What is printed unless somebody chooses: first the lines, as long as the bare form was not measured on them; every step; and the cut drawings. */
export const usualSheets = (hasPieces: boolean, areLinesOpen: boolean): readonly SheetKind[] => [
  ...(areLinesOpen ? (["lines"] as const) : []),
  "padding",
  ...(hasPieces ? (["smallCutting"] as const) : []),
];

/**
 * Cards two abreast or one, shared out among pages. Cards come in parts with a heading each; a row is as high as its higher
 * card, a heading never stands alone at the foot of a page, and a part that goes on overleaf says so there. Heights are
 * in points, reckoned for Letter, the shorter of the two papers.
 */
interface CardPart<Card> {
  readonly heading: string | null;
  readonly cards: readonly Card[];
  readonly isContinued: boolean;
}

export interface CardPage<Card> {
  readonly parts: readonly CardPart<Card>[];
  readonly isLast: boolean;
}

interface CardRoom<Card> {
  readonly heightOf: (card: Card) => number;
  readonly first: number;
  readonly later: number;
  readonly heading: number;
  /** Two if left out. */
  readonly abreast?: 1 | 2;
}

export function cardPages<Card>(
  parts: readonly Pick<CardPart<Card>, "heading" | "cards">[],
  { heightOf, first, later, heading, abreast = 2 }: CardRoom<Card>,
): readonly CardPage<Card>[] {
  const pages: CardPart<Card>[][] = [[]];
  let room = first;
  for (const part of parts) {
    const headingHeight = part.heading === null ? 0 : heading;
    let isContinued = false;
    let isOpen = false;
    for (const row of rowsOf(part.cards, abreast)) {
      const height = Math.max(...row.map(heightOf));
      const onPage = pages.at(-1) as CardPart<Card>[];
      if (height + (isOpen ? 0 : headingHeight) > room && onPage.length > 0) {
        pages.push([]);
        room = later;
        isContinued ||= isOpen;
        isOpen = false;
      }
      const page = pages.at(-1) as CardPart<Card>[];
      const begun = isOpen ? page.pop() : undefined;
      page.push({
        heading: part.heading,
        cards: [...(begun?.cards ?? []), ...row],
        isContinued: begun?.isContinued ?? isContinued,
      });
      room -= height + (isOpen ? 0 : headingHeight);
      isOpen = true;
      isContinued = true;
    }
  }
  return pages.map((page, i) => ({ parts: page, isLast: i === pages.length - 1 }));
}

const rowsOf = <Card>(cards: readonly Card[], abreast: number): readonly (readonly Card[])[] =>
  Array.from({ length: Math.ceil(cards.length / abreast) }, (_, i) => cards.slice(abreast * i, abreast * (i + 1)));

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

/** The small drawings lie two abreast, as many rows to a page as there is room for. */
export const smallCutPages = (cards: readonly CutCard[]): readonly CardPage<CutCard>[] =>
  cardPages([{ heading: null, cards }], { heightOf: smallHeight, first: 650, later: 650, heading: 0 });

/** Points: the drawing at the width it has on Letter, with the edges of its card and the gap below. */
const largeHeight = ({ scene: { frame } }: CutCard): number =>
  Math.max(leastLarge, (largeWidth * frame.height) / frame.width) + 22;

/** The same with the line of its name and how many to cut, or two where they are long. */
const smallHeight = ({ scene: { frame }, name, words }: CutCard): number =>
  (smallWidth * frame.height) / frame.width + 18 + lineHeight * Math.ceil((name.length + words.length) / lettersAcross);

/** 120 mm, as the style sheet has it, and the width of half a page of Letter inside its card. */
const largeWidth = 340;
const smallWidth = 261;
/** Name, what to cut and where it goes take seven lines beside a drawing. */
const leastLarge = 84;
const lineHeight = 13.5;
const lettersAcross = 52;
