import { upperFirst } from "../../../text/upperFirst";
import { memo, useMemo } from "react";
import { levelToMeasure } from "../../../app/progress/levelToMeasure";
import type { Piece } from "../../../core/padding/piece";
import type { Plan, PlannedPiece } from "../../../core/plan/plan";
import { layerCount } from "../../../text/pieces";
import { levelWords } from "../../../text/pictures";
import { pieceName } from "../../../text/plan";
import { planningWords } from "../../../text/planning";
import { Drawing } from "../../drawing/Drawing";
import { viewOfPieces, workScene } from "../../drawing/torso/workScene";
import { LengthFigure } from "../../kit/LengthFigure";
import { useLengths } from "../../kit/useStore";

interface PieceStripProps {
  readonly plan: Plan;
  /** The one that is open beside it, if there is one. */
  readonly shown: PlannedPiece | null;
  readonly onShow: (piece: PlannedPiece) => void;
}

/** The form once for every piece, in the order of pinning: what is on by then, what comes, and what the tape reads after it. */
export function PieceStrip({ plan, shown, onShow }: PieceStripProps) {
  const few = plan.pieces.length <= 6 ? " piece-strip-few" : "";
  return (
    <ol className={`piece-strip${few}`} aria-label={planningWords.pieceList}>
      {plan.pieces.map((piece) => (
        <li key={piece.id}>
          <button
            type="button"
            className="piece-tile"
            aria-pressed={shown === null ? undefined : piece.id === shown.id}
            onClick={() => onShow(piece)}
          >
            <PieceTile plan={plan} piece={piece} />
          </button>
        </li>
      ))}
    </ol>
  );
}

const PieceTile = memo(function PieceTile({ plan, piece }: { readonly plan: Plan; readonly piece: PlannedPiece }) {
  const { step } = useLengths();
  const level = levelToMeasure(plan, piece);
  return (
    <>
      <span className="piece-tile-number">{piece.order}</span>
      <FormWith plan={plan} piece={piece} />
      <strong className="piece-tile-name">{upperFirst(pieceName(piece))}</strong>
      <span className="piece-tile-facts">
        <span>{layerCount(piece.layers.length)}</span>
        <span>
          {levelWords[level]} <LengthFigure length={piece.readingsAfter[level].girth} step={step} unitShown={false} />
        </span>
      </span>
    </>
  );
});

/** White what is on before it, yellow what comes now. */
function FormWith({ plan, piece }: { readonly plan: Plan; readonly piece: Piece }) {
  const scene = useMemo(
    () =>
      workScene({
        levels: plan.levels,
        on: plan.pieces.filter(({ order }) => order < piece.order),
        now: [piece],
        view: viewOfPieces([piece]),
        doing: "plan",
        notes: [],
        names: null,
        crop: null,
        textSize: 30,
        title: "",
        description: "",
      }),
    [plan, piece],
  );
  return <Drawing scene={scene} hidden />;
}
