import { useMemo } from "react";
import type { PadProgress } from "../../app/padProgress";
import type { Plan } from "../../core/plan/plan";
import { useCutFrom } from "../batting/useCutFrom";
import { Drawing } from "../drawing/Drawing";
import { lengthWriter } from "../drawing/lengthWriter";
import { pieceName } from "../text/pieces";
import { cuttingSheetWords } from "../text/printing";
import { useFittingState, useLengths } from "../useStore";
import { type CutCard, cutCard } from "./cutPages";
import { SheetBox } from "./SheetBox";
import { smallCutPages } from "./smallCutPages";
import { SheetPage } from "./SheetPage";

/** Every piece drawn small, three abreast, to lie beside the padding sheet: its sizes, its centre line and its thin edge. */
export function SmallCutSheet({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const title = cuttingSheetWords.small(useFittingState(({ fitting }) => fitting.title));
  const pages = smallCutPages(useCards(plan));
  const isPinned = (id: string): boolean => progress.pieces.some(({ piece, pinned }) => pinned && piece.id === id);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets" tabIndex={0} aria-label={title}>
      {pages.map((cards, i) => (
        <SheetPage key={cards[0]?.piece.id ?? "first"} title={title} isFirst={i === 0} isLast={i === pages.length - 1}>
          <p>{cuttingSheetWords.how.join(" ")}</p>
          <div className="sheet-cards sheet-cards-small">
            {cards.map(({ piece, name, words, scene }) => (
              <section key={piece.id} className="sheet-card cut-card">
                <h3>
                  <SheetBox isTicked={isPinned(piece.id)} />
                  {name}
                </h3>
                <Drawing scene={scene} />
                <p>{words}</p>
              </section>
            ))}
          </div>
        </SheetPage>
      ))}
    </section>
  );
}

function useCards(plan: Plan): readonly CutCard[] {
  const { unit, step } = useLengths();
  const cutFrom = useCutFrom();
  return useMemo(
    () =>
      plan.pieces.map((piece) =>
        cutCard(
          piece,
          pieceName(piece, step),
          cuttingSheetWords.howMany(piece.plies, cutFrom(piece)),
          lengthWriter(unit),
        ),
      ),
    [plan, step, unit, cutFrom],
  );
}
