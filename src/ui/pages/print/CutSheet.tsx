import { useMemo } from "react";
import type { Plan } from "../../../core/plan/plan";
import { useCutFrom } from "../../kit/useDerived";
import { Drawing } from "../../drawing/Drawing";
import { lengthWriter } from "../../../text/lengthWriter";
import { testSquareScene, testSquareSide } from "../../drawing/pieceScene";
import { cutSentence, numberedName, placeSentence } from "../../../text/pieces";
import { cuttingSheetWords, printingWords } from "../../../text/printing";
import { useLengths, useUnit } from "../../kit/useStore";
import { type CutCard, cutCards, cutPages } from "../../kit/sheet/cutCards";
import { CutCardSheet } from "../../kit/sheet/CutCardSheet";
import { usePrintedName } from "../../kit/sheet/SheetPage";

/** The cut drawings: every piece with its sizes in the order of pinning, after a square that tests the printer. */
export function CutSheet({ plan }: { readonly plan: Plan }) {
  const title = cuttingSheetWords.title(usePrintedName());
  const cards = useCutCards(plan);
  return (
    <CutCardSheet
      title={title}
      pages={cutPages(cards)}
      above={(page) => (
        <>
          {page === 0 ? <CutHead /> : null}
          {cards.length === 0 ? <p>{printingWords.none}</p> : null}
        </>
      )}
      card={(card) => <CutDrawing key={card.name} card={card} />}
    />
  );
}

function useCutCards(plan: Plan): readonly CutCard[] {
  const { unit, step } = useLengths();
  const cutFrom = useCutFrom();
  return useMemo(
    () =>
      plan.pieces.flatMap((piece) => {
        const words = `${cutSentence(piece, step, cutFrom(piece))} ${placeSentence(piece, plan.levels, step)}`;
        return cutCards(piece, numberedName(piece), words, lengthWriter(unit, step), "largePaper");
      }),
    [plan, step, unit, cutFrom],
  );
}

function CutHead() {
  const lengths = lengthWriter(useUnit());
  const scene = testSquareScene(lengths);
  return (
    <div className="cut-head">
      <Drawing scene={scene} size="true" />
      <ul className="plain-list">
        <li>{cuttingSheetWords.square(lengths.write(testSquareSide(lengths.unit)))}</li>
        {cuttingSheetWords.how.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}

function CutDrawing({ card: { name, words, scene } }: { readonly card: CutCard }) {
  return (
    <section className="sheet-card cut-card">
      <Drawing scene={scene} />
      <div>
        <h3>
          <span className="sheet-box" aria-hidden />
          {name}
        </h3>
        <p>{words}</p>
      </div>
    </section>
  );
}
