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
