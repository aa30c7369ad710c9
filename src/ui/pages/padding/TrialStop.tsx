import { useState } from "react";
import { trialDraftKeys } from "../../../app/session/commands";
import { trialGain } from "../../../core/plan/trialGain";
import { mm } from "../../../core/units";
import { bandWords, firstTrail, trialStop } from "../../../text/stops";
import { ReadingInput } from "../../kit/stop/ReadingInput";
import { useTypedLength } from "../../kit/stop/useTypedLength";
import { StepFrame } from "../../kit/stop/StepFrame";
import { WorkPictureOf } from "../../kit/stop/WorkPictureOf";
import type { StepAtHand } from "../../kit/stop/useStep";
import { useDrafts, useLengths } from "../../kit/useStore";

/** The strip at the waist: the tape before and after it. Offered, and skipped at a press. */
export function TrialStop({ at }: { readonly at: StepAtHand }) {
  const { plan, record } = at;
  const { write } = useLengths();
  const [moment, setMoment] = useState<"before" | "after">("before");
  const [before, after] = [useTypedLength(trialDraftKeys.before), useTypedLength(trialDraftKeys.after)];
  const drafts = useDrafts().other;
  const { length } = moment === "before" ? before : after;
  const layer = plan.pieces[0]?.layers[0]?.thickness ?? mm(6);
  const bare = before.length ?? plan.bareForm.waist.girth;
  const expected = moment === "before" ? plan.bareForm.waist.girth : mm(bare + trialGain(layer));
  const isLess = moment === "after" && before.length !== null && length !== null && length <= before.length;
  const isReady = length !== null && !isLess;
  const keep = () => {
    if (!isReady) return;
    if (moment === "before" || before.length === null) return setMoment(moment === "before" ? "after" : "before");
    const texts = { before: drafts[trialDraftKeys.before]?.trim(), after: drafts[trialDraftKeys.after]?.trim() };
    record(trialStop.saveLast(write(length)), texts);
  };
  return (
    <StepFrame
      at={at}
      trail={firstTrail}
      act="trial"
      kind="reading"
      picture={
        <WorkPictureOf
          plan={plan}
          on={[]}
          doing={moment === "after" ? "trial" : "read"}
          tape={{ level: "waist", isHalf: false }}
          title={trialStop.what[moment]}
        />
      }
      slab={{
        words:
          length === null
            ? bandWords.nothingYet
            : moment === "before"
              ? bandWords.save(write(length), trialStop.before.next)
              : trialStop.saveLast(write(length)),
        press: keep,
        isReady,
      }}
      ways={
        <button type="button" className="patch patch-plain" onClick={() => record(trialStop.skip)}>
          {trialStop.skip}
        </button>
      }
    >
      <ul className="reading-parts">
        {(["before", "after"] as const).map((name) => (
          <li key={name}>
            <button type="button" aria-current={name === moment ? "step" : undefined} onClick={() => setMoment(name)}>
              {trialStop.what[name]} <strong>{writeOr(name === "before" ? before.length : after.length, write)}</strong>
            </button>
          </li>
        ))}
      </ul>
      <ReadingInput
        draftKey={trialDraftKeys[moment]}
        label={trialStop.what[moment]}
        expected={expected}
        isRange={false}
        onEnter={keep}
      />
      {isLess ? <p className="stop-news">{trialStop.noMore}</p> : null}
    </StepFrame>
  );
}

const writeOr = (length: ReturnType<typeof mm> | null, write: (length: ReturnType<typeof mm>) => string): string =>
  length === null ? "–" : write(length);
