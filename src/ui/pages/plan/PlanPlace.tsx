import { useState } from "react";
import type { Plan } from "../../../core/plan/plan";
import { BattingLine } from "../../kit/batting/BattingLine";
import { BeforeCutting } from "./BeforeCutting";
import { DraftNote, NextQuestions } from "../../kit/plan/DraftNote";
import { FormQuestion } from "./FormQuestion";
import { PlanChecks } from "./PlanChecks";
import { PlanFigures } from "../../kit/plan/PlanFigures";
import { PlanLevels } from "./PlanLevels";
import { PlanLimits } from "./PlanLimits";
import { PlanPart } from "./PlanPart";
import { PlanPieces } from "./PlanPieces";
import { PlanSummary } from "./PlanSummary";
import { PlanWaiting } from "../../kit/plan/PlanWaiting";
import { placeAddress } from "../../kit/place";
import { planningWords } from "../../../text/planning";
import { turnIt } from "../../../text/turnIt";
import { useDerived } from "../../kit/useDerived";

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
