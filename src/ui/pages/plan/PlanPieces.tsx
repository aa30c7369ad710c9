import { memo } from "react";
import type { Plan, PlannedPiece } from "../../../core/plan/plan";
import { useCutFrom } from "../../kit/batting/useCutFrom";
import { CutPicture } from "./CutPicture";
import { planningWords } from "../../../text/planning";
import { cutSentence, numberedName, placeSentence } from "../../../text/pieces";
import { useLengths } from "../../kit/useStore";

/** Every piece in the order of pinning: its cut drawing, its size, where it lies. */
export interface PlanPiecesProps {
  readonly plan: Plan;
  readonly shown: number | null;
  readonly onShow: (order: number | null) => void;
}

export function PlanPieces({ plan, shown, onShow }: PlanPiecesProps) {
  return (
    <ol className="pieces">
      {plan.pieces.map((piece) => (
        <li key={piece.id} className={shown === piece.order ? "piece piece-shown" : "piece"}>
          <PieceCard plan={plan} piece={piece} />
          <button
            type="button"
            className="patch patch-plain"
            aria-pressed={shown === piece.order}
            onClick={() => onShow(shown === piece.order ? null : piece.order)}
          >
            {planningWords.showPiece(piece.order)}
          </button>
        </li>
      ))}
    </ol>
  );
}

const PieceCard = memo(function PieceCard({ plan, piece }: { readonly plan: Plan; readonly piece: PlannedPiece }) {
  const { step } = useLengths();
  const cutFrom = useCutFrom();
  return (
    <>
      <h3 className="piece-name">{numberedName(piece)}</h3>
      <CutPicture piece={piece} />
      <p>{cutSentence(piece, step, cutFrom(piece))}</p>
      <p className="quiet">{placeSentence(piece, plan.levels, step)}</p>
    </>
  );
});
