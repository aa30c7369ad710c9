import type { ReactNode } from "react";
import type { Plan } from "../../../core/plan/plan";
import { goTo } from "../../place";
import { linesWords } from "../../text/linesAtForm";
import { useLengths } from "../../useStore";
import { StopFrame } from "./StopFrame";

interface FinishedStopProps {
  readonly plan: Plan;
  readonly news: ReactNode;
  readonly isAllRead: boolean;
  readonly onAgain: () => void;
}

/** Every line is measured, or what was left out is: how firm the plan is now, and the way on. */
export function FinishedStop({ plan, news, isAllRead, onAgain }: FinishedStopProps) {
  const { write } = useLengths();
  const { finished, region, trail } = linesWords;
  const isDraft = plan.basis === "draft";
  return (
    <StopFrame
      region={region}
      trail={trail}
      act="read"
      kind="working"
      title={isDraft ? finished.stillDraft : finished.title}
      sentence={finished.sentence(write(plan.mayMiss))}
      picture={null}
      news={news}
      ways={
        isAllRead ? null : (
          <button type="button" className="patch" onClick={onAgain}>
            {finished.again}
          </button>
        )
      }
      slab={{ words: finished.toPlan, press: () => goTo("plan"), isReady: true }}
    >
      <p>{finished.next(plan.pieces.length)}</p>
    </StopFrame>
  );
}
