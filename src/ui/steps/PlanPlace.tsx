import { useState } from "react";
import type { Plan } from "../../core/plan/plan";
import { BattingLine } from "../batting/BattingLine";
import { BeforeCutting } from "../plan/BeforeCutting";
import { DraftNote } from "../plan/DraftNote";
import { FormQuestion } from "../plan/FormQuestion";
import { NextQuestions } from "../plan/NextQuestions";
import { PlanChecks } from "../plan/PlanChecks";
import { PlanFigures } from "../plan/PlanFigures";
import { PlanLevels } from "../plan/PlanLevels";
import { PlanLimits } from "../plan/PlanLimits";
import { PlanPart } from "../plan/PlanPart";
import { PlanPieces } from "../plan/PlanPieces";
import { PlanSummary } from "../plan/PlanSummary";
import { PlanWaiting } from "../plan/PlanWaiting";
import { placeAddress } from "../place";
import { planningWords } from "../text/planning";
import { turnIt } from "../text/turnIt";
import { useDerived } from "../useDerived";

/** The plan: in a sentence, in pictures, what comes before the cutting, level by level, and piece by piece. */
export function PlanPlace() {
  const { planning } = useDerived();
  if (planning.kind === "waiting") return <PlanWaiting />;
  return <PlanOnTable plan={planning.plan} />;
}

function PlanOnTable({ plan }: { readonly plan: Plan }) {
  const [shownPiece, setShownPiece] = useState<number | null>(null);
  const isFirm = plan.basis === "lines";
  return (
    <>
      <div className="place-head stack">
        <h1>{planningWords.title}</h1>
        <PlanLimits plan={plan} />
        <PlanChecks />
        <DraftNote plan={plan} />
        <PlanSummary plan={plan} />
        <NextQuestions plan={plan} />
        <FormQuestion />
        <BattingLine plan={plan} />
        <div className="row">
          <a className={isFirm ? "patch patch-main" : "patch"} href={placeAddress("padding")}>
            {planningWords.toPadding}
          </a>
          <a className="patch" href={placeAddress("print")}>
            {planningWords.toPrint}
          </a>
        </div>
      </div>
      <PlanPart title={planningWords.where} className="plan-where" onPhone="open">
        <PlanFigures plan={plan} shown={shownPiece} onShow={setShownPiece} />
        <a className="patch" href={placeAddress("turning")}>
          {turnIt}
        </a>
      </PlanPart>
      <BeforeCutting plan={plan} />
      <PlanPart title={planningWords.levels}>
        <PlanLevels plan={plan} />
      </PlanPart>
      <PlanPart title={planningWords.pieceList}>
        <PlanPieces plan={plan} shown={shownPiece} onShow={setShownPiece} />
      </PlanPart>
    </>
  );
}
