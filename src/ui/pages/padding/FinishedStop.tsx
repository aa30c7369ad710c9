import type { ReactNode } from "react";
import type { Plan } from "../../../core/plan/plan";
import { placeAddress } from "../../kit/place";
import { linesWords } from "../../../text/linesAtForm";
import { useLengths } from "../../kit/useStore";
import { StopFrame } from "./StopFrame";

interface FinishedStopProps {
  readonly plan: Plan;
  readonly news: ReactNode;
  readonly isAllRead: boolean;
  readonly onAgain: () => void;
  readonly onGoOn: () => void;
}

/** Every line is measured, or what was left out is: how firm the plan is now, and the way on. */
export function FinishedStop({ plan, news, isAllRead, onAgain, onGoOn }: FinishedStopProps) {
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
        <>
          {isAllRead ? null : (
            <button type="button" className="patch patch-plain" onClick={onAgain}>
              {finished.again}
            </button>
          )}
          <a className="patch patch-plain" href={placeAddress("plan")}>
            {finished.toPlan}
          </a>
        </>
      }
      slab={{ words: finished.goOn, press: onGoOn, isReady: true }}
    >
      <p>{finished.next(plan.pieces.length)}</p>
    </StopFrame>
  );
}
