import { type ReactNode, useState } from "react";
import { sewnInTick } from "../../../text/makingSteps";
import { doneWords, handSteps } from "../../../text/stops";
import { StepFrame } from "../../kit/stop/StepFrame";
import { HandSteps } from "../../kit/stop/StopFrame";
import type { StepAtHand } from "../../kit/stop/useStep";
import { MakingPicture } from "./MakingPicture";

interface WaistTapeStopProps {
  readonly at: StepAtHand;
  readonly after: ReactNode;
  readonly ways: ReactNode;
}

/** The waist tape over a cover, and whether it holds the cover down to the back there. */
export function WaistTapeStop({ at, after, ways }: WaistTapeStopProps) {
  const { step, facts, record } = at;
  const [isSewnIn, setSewnIn] = useState(facts.isSewnIn);
  const said = doneWords(step);
  return (
    <StepFrame
      at={at}
      trail={{}}
      act={step.do}
      kind="working"
      picture={<MakingPicture at={at} />}
      after={after}
      slab={{ words: said, press: () => record(said, isSewnIn ? { sewnIn: true } : {}), isReady: true }}
      ways={ways}
    >
      <HandSteps steps={handSteps(step, "", facts)} />
      <label className="tick">
        <input type="checkbox" checked={isSewnIn} onChange={({ target }) => setSewnIn(target.checked)} />
        <span>{sewnInTick}</span>
      </label>
    </StepFrame>
  );
}
