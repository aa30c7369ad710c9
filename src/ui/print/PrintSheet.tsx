import type { Plan } from "../../core/plan/plan";
import { useCutFrom } from "../batting/useCutFrom";
import { levelToMeasure } from "../padding/levelToMeasure";
import { cutSentence, pieceName, placeSentence } from "../text/pieces";
import { levelWords } from "../text/pictures";
import { planWords } from "../text/plan";
import { printingWords } from "../text/printing";
import { useFitting, useLengths } from "../useStore";
import { PrintMeasurements } from "./PrintMeasurements";
import { PrintPieces, type PieceRow } from "./PrintPieces";
import { printPages } from "./printPages";
import { SheetHead } from "./SheetHead";

/** The padding sheet: measurements, pieces with cut sizes and places, what the tape should read, boxes to tick and fill. */
export function PrintSheet({ plan }: { readonly plan: Plan }) {
  const { title } = useFitting();
  const rows = usePieceRows(plan);
  const limits = useLimits(plan);
  const pages = printPages(rows, limits);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets" tabIndex={0} aria-label={printingWords.sheetTitle(title)}>
      {pages.map((page, i) => (
        <article key={page.rows[0]?.id ?? "first"} className="sheet">
          <SheetHead plan={plan} isContinued={i > 0} />
          {i === 0 ? <PrintMeasurements plan={plan} /> : null}
          {rows.length === 0 ? <p>{printingWords.none}</p> : <PrintPieces rows={page.rows} isContinued={i > 0} />}
          {page.isLast ? <SheetFoot limits={limits} /> : <p className="sheet-overleaf">{printingWords.overleaf}</p>}
        </article>
      ))}
    </section>
  );
}

function usePieceRows(plan: Plan): readonly PieceRow[] {
  const { step, write } = useLengths();
  const cutFrom = useCutFrom();
  return plan.pieces.map((piece) => {
    const level = levelToMeasure(plan, piece);
    const { girth, frontArc } = piece.readingsAfter[level];
    const name = pieceName(piece, step);
    const place = placeSentence(piece, plan.levels, step);
    return {
      id: piece.id,
      name,
      place,
      piece: `${name}. ${place}`,
      cut: cutSentence(piece, step, cutFrom(piece)),
      tape: printingWords.tapeReads(levelWords[level], write(girth), write(frontArc)),
    };
  });
}

function useLimits({ shortfalls, seamShifts }: Plan): readonly string[] {
  const { step } = useLengths();
  const words = planWords(step);
  return [
    ...shortfalls.map((shortfall) => words.shortfallAdvice(shortfall)),
    ...seamShifts.map((shift) => words.seamShift(shift)),
  ];
}

function SheetFoot({ limits }: { readonly limits: readonly string[] }) {
  return (
    <footer className="sheet-foot">
      {limits.length === 0 ? null : (
        <>
          <h3>{printingWords.limits}</h3>
          <ul className="plain-list">
            {limits.map((limit) => (
              <li key={limit}>{limit}</li>
            ))}
          </ul>
        </>
      )}
      <p>
        {printingWords.after} {printingWords.care} {printingWords.guessNote}
      </p>
    </footer>
  );
}
