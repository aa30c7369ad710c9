import { memo, useMemo } from "react";
import type { Plan, PlannedPiece } from "../../../core/plan/plan";
import { cutSentence, numberedName, placeSentence } from "../../../text/pieces";
import { pieceName } from "../../../text/plan";
import { planningWords } from "../../../text/planning";
import { Drawing } from "../../drawing/Drawing";
import { lengthWriter } from "../../../text/lengthWriter";
import { layerPictures, pieceScene } from "../../drawing/pieceScene";
import type { PickedPieceProps } from "../../kit/plan/PlanFigures";
import { useCutFrom } from "../../kit/useDerived";
import { useLengths } from "../../kit/useStore";

/** Every piece in the order of pinning: its cut drawing, its size, where it lies. */
export function PlanPieces({ plan, shown, onShow }: PickedPieceProps) {
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

/** Every layer of a piece as it is cut. */
function CutPicture({ piece }: { readonly piece: PlannedPiece }) {
  const { unit, step } = useLengths();
  const scenes = useMemo(
    () => layerPictures(piece, pieceName(piece), lengthWriter(unit, step), "screen").map(pieceScene),
    [piece, unit, step],
  );
  return (
    <div className="piece-cut">
      {scenes.map((scene) => (
        <Drawing key={scene.title} scene={scene} />
      ))}
    </div>
  );
}
