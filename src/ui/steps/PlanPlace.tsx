import { useState } from "react";
import type { Plan } from "../../core/plan/plan";
import { tapeAgreement } from "../../core/tolerances";
import { formatArea } from "../area";
import { BattingLine } from "../batting/BattingLine";
import { PlanFigures } from "../plan/PlanFigures";
import { PlanLevels } from "../plan/PlanLevels";
import { PlanLimits } from "../plan/PlanLimits";
import { PlanPieces } from "../plan/PlanPieces";
import { PlanWaiting } from "../plan/PlanWaiting";
import { deepestPlace, guessCount } from "../plan/planSummary";
import { placeAddress } from "../place";
import { planningWords } from "../text/planning";
import { turnIt } from "../text/turnIt";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";

/** The plan: in a sentence, in pictures, level by level, and piece by piece. */
export function PlanPlace() {
  const { planning } = useDerived();
  if (planning.kind === "waiting") return <PlanWaiting />;
  return <PlanOnTable plan={planning.plan} />;
}

function PlanOnTable({ plan }: { readonly plan: Plan }) {
  const [shownPiece, setShownPiece] = useState<number | null>(null);
  return (
    <>
      <div className="place-head stack">
        <h1>{planningWords.title}</h1>
        <Summary plan={plan} />
        <div className="row">
          <a className="patch patch-main" href={placeAddress("padding")}>
            {planningWords.toPadding}
          </a>
          <a className="patch" href={placeAddress("print")}>
            {planningWords.toPrint}
          </a>
        </div>
      </div>
      <PlanLimits plan={plan} />
      <section className="stitched plan-where">
        <h2>{planningWords.where}</h2>
        <PlanFigures plan={plan} shown={shownPiece} onShow={setShownPiece} />
        <a className="patch" href={placeAddress("turning")}>
          {turnIt}
        </a>
      </section>
      <section className="stitched">
        <h2>{planningWords.levels}</h2>
        <PlanLevels plan={plan} />
      </section>
      <section className="stitched">
        <h2>{planningWords.pieceList}</h2>
        <BattingLine plan={plan} />
        <PlanPieces plan={plan} shown={shownPiece} onShow={setShownPiece} />
      </section>
    </>
  );
}

function Summary({ plan }: { readonly plan: Plan }) {
  const { unit, write } = useLengths();
  if (plan.pieces.length === 0) return <p className="lead">{planningWords.nothing}</p>;
  const guesses = guessCount(plan);
  const agreement = plan.shortfalls.length === 0 ? planningWords.agreement : planningWords.agreementBut;
  return (
    <>
      <p className="lead">
        {planningWords.summary(planningWords.pieces(plan.pieces.length), deepestPlace(plan))}{" "}
        {planningWords.area(formatArea(plan.battingArea, unit))}
      </p>
      <p>
        {agreement(write(tapeAgreement))} {guesses > 0 ? planningWords.guesses(guesses) : null}
      </p>
    </>
  );
}
