import { useMemo, useState } from "react";
import { coverProgress } from "../../../app/progress/coverProgress";
import type { PadProgress } from "../../../app/progress/padProgress";
import { possibleWork } from "../../../app/progress/replay";
import { chosenCloth } from "../../../app/steps/chosenCloth";
import { partOfStep } from "../../../app/steps/jobPart";
import { makingStages } from "../../../app/steps/makingStages";
import { lineDepths, workFacts } from "../../../app/steps/workFacts";
import { workState } from "../../../app/steps/workState";
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
import { CoverAfterAll, MakingStop } from "./MakingStop";
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
  const stages = useMemo(() => {
    const state = workState(workFacts(work, lineDepths(plan)));
    return makingStages(state, isPadded ? now : null, armReading(lengths?.body ?? {}).kind === "whole");
  }, [work, plan, isPadded, now, lengths]);
  const hasCover = chosenCloth(fitting).kind !== "none";
  const [isChoosing, setChoosing] = useState(false);
  return (
    <>
      <div className="padding-page finishing-page" aria-busy={isWorking}>
        <MakingRoute stages={stages} />
        {answer === null ? (
          <p className="padding-working">{stopWords.working}</p>
        ) : !isPadded ? (
          <PaddingFirst progress={progress} hasCover={hasCover} />
        ) : isChoosing && !hasCover ? (
          <CoverAfterAll current={answer} isWorking={isWorking} onEnd={() => setChoosing(false)} />
        ) : (
          <MakingStop current={answer} isWorking={isWorking} />
        )}
      </div>
      <div className="padding-more stack">
        <DoneBoard plan={plan} progress={hasCover ? covered : progress} hasCover={hasCover} />
        <SuppliesPart plan={plan} onCover={isPadded ? () => setChoosing(true) : null} />
      </div>
    </>
  );
}

/** Nothing goes over padding that is not done. */
function PaddingFirst({ progress, hasCover }: { readonly progress: PadProgress; readonly hasCover: boolean }) {
  const { pieces, pinnedCount } = progress;
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
      <p>{finishingWords.lead(hasCover)}</p>
    </StopFrame>
  );
}
