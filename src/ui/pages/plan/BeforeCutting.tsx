import { useMemo } from "react";
import type { Plan } from "../../../core/plan/plan";
import { Cautions } from "../../kit/Cautions";
import { levelLines, markLinesSentence, markLinesWords } from "../../../text/levelLines";
import { planningWords } from "../../../text/planning";
import { useLengths } from "../../kit/useStore";
import { PlanPart } from "./PlanPart";
import { PlanShopping } from "./PlanShopping";

/** What is done before anything is cut: the lines on the form, and what to have ready. */
export function BeforeCutting({ plan }: { readonly plan: Plan }) {
  const { step } = useLengths();
  const areHeightsGuessed = useMemo(
    () => levelLines(plan.levels, step).some(({ isGuessed }) => isGuessed),
    [plan, step],
  );
  return (
    <PlanPart title={planningWords.beforeCutting} className="stack" onPhone="open">
      <h3>{markLinesWords.title}</h3>
      <p>{markLinesSentence(plan.levels, step)}</p>
      <p className="quiet">
        {markLinesWords.how} {areHeightsGuessed ? null : markLinesWords.why}
      </p>
      <PlanShopping plan={plan} />
      <Cautions at="cutting" />
    </PlanPart>
  );
}
