import type { CurrentStep } from "../../../app/steps/currentStep";
import type { Piece } from "../../../core/padding/piece";
import { BasteStop } from "./BasteStop";
import { MeasureStop } from "./MeasureStop";
import { PieceLook } from "./PieceLook";
import { PlanAnewStop } from "./PlanAnewStop";
import { PrepareStop } from "./PrepareStop";
import { TrialStop } from "./TrialStop";
import { TwiceStop } from "./TwiceStop";
import { useStepAtHand } from "./useStep";
import { WorkStop } from "./WorkStop";

interface StepStopProps {
  readonly current: CurrentStep;
  readonly isWorking: boolean;
  readonly looked: Piece | null;
  readonly onBack: () => void;
}

/** The stop of the one next step, or of a piece that is looked at meanwhile. */
export function StepStop({ current, isWorking, looked, onBack }: StepStopProps) {
  const at = useStepAtHand(current, isWorking);
  const { step, plan } = at;
  if (looked !== null) return <PieceLook at={at} piece={looked} onBack={onBack} />;
  switch (step.do) {
    case "prepare-form":
      return <PrepareStop plan={plan} later={null} />;
    case "trial":
      return <TrialStop at={at} />;
    case "read":
    case "read-all":
    case "check":
      // Another level, or the same one asked again, begins anew.
      return step.isTwice ? <TwiceStop key={keyOf(current)} at={at} /> : <MeasureStop key={keyOf(current)} at={at} />;
    case "plan-anew":
      return <PlanAnewStop at={at} />;
    case "baste":
      return <BasteStop at={at} />;
    default:
      return <WorkStop at={at} />;
  }
}

const keyOf = ({ step }: CurrentStep): string => `${step.do} ${step.names.join()}`;
