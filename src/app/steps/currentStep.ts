import type { Piece } from "../../core/padding/piece";
import type { PlanInput } from "../../core/plan/basis";
import type { Plan } from "../../core/plan/plan";
import type { Replan } from "../../core/plan/replanFitting";
import { pieceFromWork, type SettledFitting } from "../../document/fitting";
import type { FittingMeasurements } from "../../document/fittingMeasurements";
import { fittingBuilds } from "../above/fittingBuilds";
import { replanAt } from "../progress/learning";
import { basisOf, replay } from "../progress/replay";
import { type StepFacts, stepFacts } from "./stepFacts";
import { nextStep } from "./nextStep";
import { outlook } from "./outlook";
import type { Step } from "./step";
import { workFacts } from "./workFacts";
import { workState } from "./workState";

/** What is next, and what it was decided by: everything that shows or says the next step takes it from here. */
export interface CurrentStep {
  readonly step: Step;
  readonly plan: Plan;
  readonly replan: Replan;
  readonly facts: StepFacts;
}

export function currentStep(
  plan: Plan,
  input: PlanInput,
  fitting: SettledFitting,
  lengths: FittingMeasurements,
): CurrentStep {
  const { readingError } = lengths;
  const replayed = replay(input, fitting, readingError);
  const replan = replanAt(plan, input, replayed.now, readingError);
  const facts = stepFacts(plan, input.body, fitting);
  const layer = replan.calibration.building.layer;
  const above = fittingBuilds({ plan, layer }, { lengths, input }, fitting);
  const from = { above, plan, replan, input, replay: replayed, fitting };
  return {
    step: nextStep(workState(workFacts(fitting.work, basisOf(input).depths)), outlook(from)),
    plan,
    replan,
    facts,
  };
}

/** Every piece that a step may speak of: what was pinned, what the plan has, and what a new one would have. */
export const piecesNamed = (
  { plan, replan }: Pick<CurrentStep, "plan" | "replan">,
  { work }: Pick<SettledFitting, "work">,
): readonly Piece[] => [
  ...work.flatMap((entry) => (entry.did === "pinned" ? [pieceFromWork(entry.piece)] : [])),
  ...replan.plan.pieces,
  ...plan.pieces,
];
