import { memo, useMemo } from "react";
import type { Plan } from "../../../core/plan/plan";
import { Drawing } from "../../drawing/Drawing";
import { type FigurePlace, figureScene } from "../../drawing/figureScene";
import type { FigureView } from "../../drawing/figureView";
import { lengthWriter } from "../../../text/lengthWriter";
import { planningWords } from "../../../text/planning";
import { useLengths } from "../useStore";

/** A plan with the piece that is picked out, by its order; null while none is. */
export interface PickedPieceProps {
  readonly plan: Plan;
  readonly shown: number | null;
  readonly onShow: (order: number | null) => void;
}

/** The padded form from the front and the back, with every piece where it goes and one of them picked out. */
export function PlanFigures({ plan, shown, onShow }: PickedPieceProps) {
  return (
    <div className="figures">
      <div className="figures-views">
        {(["front", "side", "back"] as const).map((view) => (
          <figure key={view} className="figure">
            <FigureOf plan={plan} view={view} shown={shown} />
            <figcaption className="quiet small">{planningWords.figure[view]}</figcaption>
          </figure>
        ))}
      </div>
      <PieceDots plan={plan} shown={shown} onShow={onShow} />
    </div>
  );
}

interface FigureOfProps {
  readonly plan: Plan;
  readonly view: FigureView;
  readonly shown: number | null;
  readonly shownOn?: FigurePlace;
  readonly isNamed?: boolean;
}

export const FigureOf = memo(function FigureOf({
  plan,
  view,
  shown,
  shownOn = "screen",
  isNamed = true,
}: FigureOfProps) {
  const { unit, step } = useLengths();
  const scene = useMemo(
    () =>
      figureScene({
        levels: plan.levels,
        pieces: plan.pieces,
        view,
        lengths: lengthWriter(unit, step),
        shownOn,
        isNamed,
        ...(shown === null ? {} : { now: shown }),
      }),
    [plan, view, shown, shownOn, isNamed, unit, step],
  );
  return <Drawing scene={scene} />;
});

/** A pin for every piece; pressing one shows it on the figure. */
function PieceDots({ plan, shown, onShow }: PickedPieceProps) {
  return (
    <ul className="pins" aria-label={planningWords.pieceList}>
      {plan.pieces.map(({ id, order }) => (
        <li key={id}>
          <button
            type="button"
            className="pin"
            aria-pressed={shown === order}
            aria-label={planningWords.showPiece(order)}
            onClick={() => onShow(shown === order ? null : order)}
          >
            {order}
          </button>
        </li>
      ))}
    </ul>
  );
}
