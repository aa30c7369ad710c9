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
import { CutCardSheet } from "./CutCardSheet";
import { SheetBox, usePrintedName } from "./SheetPage";
import { type CutCard, cutCards, smallCutPages } from "./cutCards";

/** Every piece drawn small, two abreast, to lie beside the padding sheet: its sizes, its centre line and its thin edge. */
export function SmallCutSheet({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const title = cuttingSheetWords.small(usePrintedName());
  const pages = smallCutPages(useSmallCards(plan));
  const isPinned = (id: string): boolean => progress.pieces.some(({ piece, pinned }) => pinned && piece.id === id);
  return (
    <CutCardSheet
      title={title}
      pages={pages}
      size="small"
      above={(page) => (page === 0 ? <p className="sheet-how">{cuttingSheetWords.how.join(" ")}</p> : null)}
      card={(card) => <SmallCard key={card.name} card={card} isPinned={isPinned(card.piece.id)} />}
    />
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
