import { useEffect, useRef } from "react";
import type { Plan, PlannedPiece } from "../../../core/plan/plan";
import { cutSentence, numberedName, placeSentence } from "../../../text/pieces";
import { planningWords } from "../../../text/planning";
import { CutOfPiece } from "../../kit/plan/CutOfPiece";
import { useCutFrom } from "../../kit/useDerived";
import { useLengths } from "../../kit/useStore";

interface OpenPieceProps {
  readonly plan: Plan;
  readonly piece: PlannedPiece;
  readonly onLarger: () => void;
}

/** The piece that is chosen: how each layer is cut, and where it goes. */
export const OpenPiece = ({ plan, piece, onLarger }: OpenPieceProps) => (
  <section className="open-piece">
    <div className="row apart">
      <h2>{numberedName(piece)}</h2>
      <button type="button" className="patch" onClick={onLarger}>
        {planningWords.larger}
      </button>
    </div>
    <CutOfPiece key={piece.id} piece={piece} shownOn="brief" />
    <PieceSentences plan={plan} piece={piece} />
  </section>
);

interface LargeCutProps {
  readonly plan: Plan;
  readonly piece: PlannedPiece;
  /** On a phone the words of the drawing are larger beside the piece. */
  readonly isPhone: boolean;
  readonly onClose: () => void;
}

/** The same over the whole screen, to cut from: a dialog of the browser's own, which Escape closes. */
export function LargeCut({ plan, piece, isPhone, onClose }: LargeCutProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className="over-all cut-large" aria-label={numberedName(piece)} onClose={onClose}>
      <div className="row apart">
        <h2>{numberedName(piece)}</h2>
        <button type="button" className="patch patch-main" onClick={() => dialog.current?.close()}>
          {planningWords.backToPlan}
        </button>
      </div>
      <CutOfPiece piece={piece} shownOn={isPhone ? "screen" : "largePaper"} />
      <PieceSentences plan={plan} piece={piece} />
    </dialog>
  );
}

function PieceSentences({ plan, piece }: { readonly plan: Plan; readonly piece: PlannedPiece }) {
  const { step } = useLengths();
  const cutFrom = useCutFrom();
  return (
    <div className="open-piece-words">
      <p>{cutSentence(piece, step, cutFrom(piece))}</p>
      <p className="quiet">{placeSentence(piece, plan.levels, step)}</p>
    </div>
  );
}
