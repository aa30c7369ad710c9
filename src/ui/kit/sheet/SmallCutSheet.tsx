import { useMemo } from "react";
import type { PadProgress } from "../../../app/progress/padProgress";
import { outermostLayer } from "../../../core/padding/piece";
import type { Plan } from "../../../core/plan/plan";
import { featherWords, numberedName } from "../../../text/pieces";
import { cuttingSheetWords } from "../../../text/printing";
import { Drawing } from "../../drawing/Drawing";
import { lengthWriter } from "../../../text/lengthWriter";
import { useCutFrom } from "../useDerived";
import { useLengths } from "../useStore";
import { SheetBox, SheetPage, usePrintedName } from "./SheetPage";
import { type CutCard, cutCards } from "./cutCards";

/**
 * Every piece drawn small, two abreast, to lie beside the padding sheet: its sizes, its centre line and its thin edge. The paper breaks it
 * between two rows of cards.
 */
export function SmallCutSheet({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const title = cuttingSheetWords.small(usePrintedName());
  const cards = useSmallCards(plan);
  const isPinned = (id: string): boolean => progress.pieces.some(({ piece, pinned }) => pinned && piece.id === id);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets" tabIndex={0} aria-label={title}>
      <SheetPage title={title} isFirst isLast>
        <p>{cuttingSheetWords.how.join(" ")}</p>
        <div className="sheet-cards sheet-cards-small">
          {cards.map((card) => (
            <SmallCard key={card.name} card={card} isPinned={isPinned(card.piece.id)} />
          ))}
        </div>
      </SheetPage>
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

/** The small cut drawing of every piece, with its name and how many to cut. */
function useSmallCards(plan: Plan): readonly CutCard[] {
  const { unit, step } = useLengths();
  const cutFrom = useCutFrom();
  return useMemo(
    () =>
      plan.pieces.flatMap((piece) =>
        cutCards(
          piece,
          numberedName(piece),
          cuttingSheetWords.howMany(
            piece.layers.length,
            cutFrom(piece),
            featherWords(outermostLayer(piece).feather, step),
          ),
          lengthWriter(unit, step),
          "paper",
        ),
      ),
    [plan, step, unit, cutFrom],
  );
}
