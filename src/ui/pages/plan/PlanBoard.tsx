import { useState } from "react";
import type { Plan, PlannedPiece } from "../../../core/plan/plan";
import { phoneQuery, useMediaQuery } from "../../kit/useScreen";
import { LargeCut, OpenPiece } from "./OpenPiece";
import { PieceStrip } from "./PieceStrip";
import "./plan.css";

/** All pieces and one of them open. On a phone a press on a piece shows its cut drawing over the whole screen. */
export function PlanBoard({ plan }: { readonly plan: Plan }) {
  const [chosen, setChosen] = useState<string | null>(null);
  const [isLarge, setLarge] = useState(false);
  const isPhone = useMediaQuery(phoneQuery);
  const shown = plan.pieces.find(({ id }) => id === chosen) ?? plan.pieces[0];
  if (shown === undefined) return null;
  const show = ({ id }: PlannedPiece) => {
    setChosen(id);
    setLarge(isPhone);
  };
  return (
    <div className="plan-board">
      <PieceStrip plan={plan} shown={isPhone ? null : shown} onShow={show} />
      {isPhone ? null : <OpenPiece plan={plan} piece={shown} onLarger={() => setLarge(true)} />}
      {isLarge ? <LargeCut plan={plan} piece={shown} isPhone={isPhone} onClose={() => setLarge(false)} /> : null}
    </div>
  );
}
