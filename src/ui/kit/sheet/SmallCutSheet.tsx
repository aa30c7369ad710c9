import type { PadProgress } from "../../../app/progress/padProgress";
import type { Plan } from "../../../core/plan/plan";
import { Drawing } from "../../drawing/Drawing";
import { cuttingSheetWords } from "../../../text/printing";
import { type CutCard, smallCutPages } from "./cutPages";
import { usePrintedName } from "./printedName";
import { SheetBox } from "./SheetBox";
import { SheetPage } from "./SheetPage";
import { useSmallCards } from "./useSmallCards";

/** Every piece drawn small, two abreast, to lie beside the padding sheet: its sizes, its centre line and its thin edge. */
export function SmallCutSheet({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const title = cuttingSheetWords.small(usePrintedName());
  const pages = smallCutPages(useSmallCards(plan));
  const isPinned = (id: string): boolean => progress.pieces.some(({ piece, pinned }) => pinned && piece.id === id);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets" tabIndex={0} aria-label={title}>
      {pages.map(({ parts, isLast }, i) => {
        const cards = parts.flatMap((part) => part.cards);
        return (
          <SheetPage key={cards[0]?.name ?? "first"} title={title} isFirst={i === 0} isLast={isLast}>
            <p className="sheet-how">{cuttingSheetWords.how.join(" ")}</p>
            <div className="sheet-cards sheet-cards-small">
              {cards.map((card) => (
                <SmallCard key={card.name} card={card} isPinned={isPinned(card.piece.id)} />
              ))}
            </div>
          </SheetPage>
        );
      })}
    </section>
  );
}

function SmallCard({ card: { name, words, scene }, isPinned }: { readonly card: CutCard; readonly isPinned: boolean }) {
  return (
    <section className="sheet-card cut-card">
      <h3>
        <SheetBox isTicked={isPinned} />
        <span>
          {name}. <span className="cut-many">{words}</span>
        </span>
      </h3>
      <Drawing scene={scene} />
    </section>
  );
}
