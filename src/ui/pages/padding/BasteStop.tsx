import { doneWords, handSteps, pinsOutStop, tapeTrail } from "../../../text/stops";
import { PinsOutStop } from "../../kit/stop/PinsOutStop";
import type { StepAtHand } from "../../kit/stop/useStep";
import { WorkPictureOf } from "../../kit/stop/WorkPictureOf";

/** Basted, the pins out and counted. */
export function BasteStop({ at }: { readonly at: StepAtHand }) {
  const { step, plan, pinned, words, facts } = at;
  const now = pinned.filter(({ id }) => step.pieceIds.includes(id));
  return (
    <PinsOutStop
      at={at}
      trail={tapeTrail}
      act="baste"
      picture={<WorkPictureOf plan={plan} on={pinned} now={now} doing="baste" title={words[0]} />}
      hands={handSteps(step, "", facts)}
      said={(count) => (count === null ? doneWords(step) : pinsOutStop.done("Basted", count))}
    />
  );
}
