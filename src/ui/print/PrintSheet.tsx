import type { PadProgress } from "../../app/padProgress";
import type { Plan } from "../../core/plan/plan";
import { linesWords } from "../text/linesAtForm";
import { printingWords } from "../text/printing";
import { useLengths } from "../useStore";
import { PrintBefore } from "./PrintBefore";
import { PrintMeasurements } from "./PrintMeasurements";
import { PrintPieces } from "./PrintPieces";
import { SheetFoot } from "./SheetFoot";
import { usePrintedName } from "./printedName";
import { SheetHead } from "./SheetHead";
import { usePaddingPages } from "./usePaddingPages";

/**
 * The padding sheet: the lines and the bra, the figure, measurements, pieces with cut sizes and places, what the tape
 * should read, boxes to tick and fill; what is done already is ticked and filled in.
 */
export function PrintSheet({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const title = usePrintedName();
  const { pages, limits } = usePaddingPages(plan, progress);
  const hasPieces = plan.pieces.length > 0;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets" tabIndex={0} aria-label={printingWords.sheetTitle(title)}>
      {pages.map((page, i) => (
        <article key={page.rows[0]?.id ?? "first"} className="sheet">
          <SheetHead plan={plan} isContinued={i > 0} />
          {i === 0 ? <DraftLine plan={plan} isBegun={progress.pinnedCount > 0} /> : null}
          {i === 0 && hasPieces ? <PrintBefore plan={plan} isBegun={progress.pinnedCount > 0} /> : null}
          {i === 0 ? <PrintMeasurements plan={plan} progress={progress} /> : null}
          {hasPieces ? <PrintPieces rows={page.rows} isContinued={i > 0} /> : <p>{printingWords.none}</p>}
          {page.isLast ? (
            <SheetFoot plan={plan} limits={limits} />
          ) : (
            <p className="sheet-overleaf">{printingWords.overleaf}</p>
          )}
        </article>
      ))}
    </section>
  );
}

/** A plan that is still a draft says so at its head, with what it may miss by. */
function DraftLine({ plan, isBegun }: { readonly plan: Plan; readonly isBegun: boolean }) {
  const { write } = useLengths();
  if (plan.basis !== "draft") return null;
  const note = linesWords.draft.note(write(plan.mayMiss));
  return (
    <p>
      <strong>{isBegun ? printingWords.draftBegun(note) : printingWords.draft(note)}</strong>
    </p>
  );
}
