import type { ReactNode } from "react";
import type { CardPage } from "../../../app/print/cardPages";
import type { CutCard } from "./cutCards";
import { SheetPage } from "./SheetPage";

interface CutCardSheetProps {
  readonly title: string;
  readonly pages: readonly CardPage<CutCard>[];
  /** What stands on a page above its cards. */
  readonly above: (page: number) => ReactNode;
  readonly card: (card: CutCard) => ReactNode;
}

/** The pages of cut drawings, card by card. */
export function CutCardSheet({ title, pages, above, card }: CutCardSheetProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets" tabIndex={0} aria-label={title}>
      {pages.map(({ parts, isLast }, i) => {
        const cards = parts.flatMap((part) => part.cards);
        return (
          <SheetPage key={cards[0]?.name ?? "first"} title={title} isFirst={i === 0} isLast={isLast}>
            {above(i)}
            <div className="sheet-cards sheet-cards-large">{cards.map(card)}</div>
          </SheetPage>
        );
      })}
    </section>
  );
}
