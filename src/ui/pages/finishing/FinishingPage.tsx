import { coverProgress } from "../../../app/progress/coverProgress";
import type { PadProgress } from "../../../app/progress/padProgress";
import { possibleWork } from "../../../app/progress/replay";
import { partOfStep } from "../../../app/steps/jobPart";
import { armReading } from "../../../core/arm/armReadings";
import type { Plan } from "../../../core/plan/plan";
import { finishingWords } from "../../../text/finishing";
import { stopWords } from "../../../text/stops";
import { goTo } from "../../kit/page";
import { PlanWaiting } from "../../kit/plan/PlanWaiting";
import { StopFrame } from "../../kit/stop/StopFrame";
import { useAnswer } from "../../kit/useAnswer";
import { useDerived } from "../../kit/useDerived";
import { useFitting } from "../../kit/useStore";
import { DoneBoard } from "./DoneBoard";
import "./finishing.css";
import { MakingRoute } from "./MakingRoute";
import { MakingStop } from "./MakingStop";
import { SuppliesPart } from "./SuppliesPart";

/** Finishing: the one next step once the padding is done, where it stands among all that come over the padding, and what it takes. */
export function FinishingPage() {
  const { planning, progress, lengths } = useDerived();
  if (planning.kind === "waiting" || progress === null || lengths === null) return <PlanWaiting />;
  return <Finishing plan={planning.plan} progress={progress} />;
}

function Finishing({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const { lengths, impossible } = useDerived();
  const fitting = useFitting();
  const { answer, isWorking } = useAnswer("step");
  const now = answer?.step.do ?? null;
  const isPadded = now !== null && partOfStep[now] !== "padding";
  const { work, unit } = fitting;
  const covered = coverProgress(plan, progress, { work: possibleWork(work, impossible), unit });
  return (
    <>
      <div className="padding-page finishing-page" aria-busy={isWorking}>
        <MakingRoute now={isPadded ? now : null} hasArm={armReading(lengths?.body ?? {}).kind === "whole"} />
        {answer === null ? (
          <p className="padding-working">{stopWords.working}</p>
        ) : isPadded ? (
          <MakingStop current={answer} isWorking={isWorking} />
        ) : (
          <PaddingFirst progress={progress} />
        )}
      </div>
      <div className="padding-more stack">
        <DoneBoard plan={plan} progress={covered} />
        <SuppliesPart plan={plan} />
      </div>
    </>
  );
}

/** Nothing goes over padding that is not done. */
function PaddingFirst({ progress: { pieces, pinnedCount } }: { readonly progress: PadProgress }) {
  const left = pieces.length - pinnedCount;
  return (
    <StopFrame
      region={stopWords.region}
      trail={{}}
      act="padding-first"
      kind="working"
      title={finishingWords.paddingFirst}
      sentence={left === 0 ? finishingWords.notDone : finishingWords.notAllOn(left)}
      picture={null}
      slab={{ words: finishingWords.toPadding, press: () => goTo("padding"), isReady: true }}
      ways={null}
    >
      <p>{finishingWords.lead}</p>
    </StopFrame>
  );
}
