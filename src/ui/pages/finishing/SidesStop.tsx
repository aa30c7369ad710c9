import type { ReactNode } from "react";
import { closedAgain } from "../../../text/makingSteps";
import { doneWords, handSteps, pinsOutStop } from "../../../text/stops";
import { PinsOutStop } from "../../kit/stop/PinsOutStop";
import type { StepAtHand } from "../../kit/stop/useStep";
import { CoverReadings } from "./CoverReadings";
import { MakingPicture } from "./MakingPicture";

/** The sides of the cover sewn or corrected, and their pins out and counted. */
export function SidesStop({ at, ways }: { readonly at: StepAtHand; readonly ways: ReactNode }) {
  const { step, facts } = at;
  const said = step.do === "close-cover" && facts.isReopened ? closedAgain : doneWords(step);
  return (
    <PinsOutStop
      at={at}
      trail={{}}
      act={step.do}
      picture={<MakingPicture at={at} />}
      news={step.do === "correct-cover" ? <CoverReadings at={at} /> : null}
      hands={handSteps(step, "", facts)}
      said={(count) => (count === null ? said : pinsOutStop.done(said, count))}
      ways={ways}
    />
  );
}
