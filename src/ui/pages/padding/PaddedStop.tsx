import { paddingWords } from "../../../text/padding";
import { stopWords, tapeTrail } from "../../../text/stops";
import { goTo } from "../../kit/page";
import { StopFrame } from "../../kit/stop/StopFrame";
import type { StepAtHand } from "../../kit/stop/useStep";
import { WorkPictureOf } from "../../kit/stop/WorkPictureOf";

/** The padding is done, and the next step lies over it. */
export function PaddedStop({ at: { step, plan, pinned, words, facts } }: { readonly at: StepAtHand }) {
  return (
    <StopFrame
      region={stopWords.region}
      trail={tapeTrail}
      act="look"
      kind="working"
      title={stopWords.padded}
      sentence={plan.pieces.length === 0 ? paddingWords.nothing : stopWords.paddedNext(words[0])}
      picture={<WorkPictureOf plan={plan} on={pinned} doing="none" title={stopWords.padded} />}
      slab={{ words: stopWords.toFinishing, press: () => goTo("finishing"), isReady: true }}
      ways={null}
    >
      {pinned.length === 0 ? null : (
        <p>{step.do === "close-cover" && !facts.isReopened ? stopWords.coverPinned : stopWords.safeStop}</p>
      )}
    </StopFrame>
  );
}
