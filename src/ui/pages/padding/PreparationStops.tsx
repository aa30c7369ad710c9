import { type ReactNode, useState } from "react";
import { trialDraftKeys } from "../../../app/session/commands";
import { stepFacts } from "../../../app/steps/stepFacts";
import { trialTurns } from "../../../app/steps/stepRecord";
import type { Plan } from "../../../core/plan/plan";
import { mm } from "../../../core/units";
import { formKindWords, readyWords } from "../../../text/formKinds";
import { linesWords } from "../../../text/linesAtForm";
import { bandWords, firstTrail, trialStop } from "../../../text/stops";
import { LengthField } from "../../kit/field/LengthField";
import { useBenchField } from "../../kit/measure/useMeasurement";
import { pageAddress } from "../../kit/page";
import { useDerived } from "../../kit/useDerived";
import { useDispatch, useDrafts, useFitting, useLengths } from "../../kit/useStore";
import { ReadingInput, useTypedLength } from "../../kit/stop/ReadingInput";
import { StepFrame } from "../../kit/stop/StepFrame";
import { HandSteps, StopFrame } from "../../kit/stop/StopFrame";
import { WorkPictureOf } from "../../kit/stop/WorkPictureOf";
import type { StepAtHand } from "../../kit/stop/useStep";

/** The form made ready: the base, the bra, plumb; and its nape above the floor, if somebody measures it. */
export function PrepareStop({ plan, later }: { readonly plan: Plan; readonly later: ReactNode }) {
  const dispatch = useDispatch();
  const { prepare, region, trail } = linesWords;
  const body = useDerived().lengths?.body ?? {};
  const fitting = useFitting();
  const { step: lengths } = useLengths();
  const ready = readyWords(stepFacts(plan, body, fitting).form, lengths);
  const isGuessed = plan.levels.some(({ depthBelowNape }) => depthBelowNape.kind === "estimated");
  return (
    <StopFrame
      region={region}
      trail={trail}
      act="prepare"
      kind="working"
      title={prepare.title}
      sentence={prepare.sentence}
      picture={null}
      ways={later}
      slab={{
        words: prepare.done,
        press: () =>
          dispatch({ does: "record", entry: { did: "prepared", what: "form", at: new Date().toISOString() } }),
        isReady: true,
      }}
    >
      {isGuessed ? (
        <p className="stop-news">
          {prepare.heightsFirst} <a href={pageAddress("body", "napeHeight")}>{prepare.toHeights}</a>
        </p>
      ) : null}
      <HandSteps steps={prepare.steps} />
      {fitting.form.kind === undefined ? (
        <p>
          <a href={pageAddress("form")}>{formKindWords.ask}</a>
        </p>
      ) : null}
      {ready.length === 0 ? null : (
        <ul className="plain-list">
          {ready.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      <NapeField />
    </StopFrame>
  );
}

/** With the form's nape above the floor every line has its height for the pointer, and nobody subtracts. */
function NapeField() {
  const { field, input } = useBenchField("form", "napeHeight", 0);
  const { nape } = linesWords.prepare;
  return (
    <div className="stop-nape">
      <LengthField label={nape.label} state={field} inputRef={input} />
      <p className="quiet">{nape.why}</p>
    </div>
  );
}

/** The strip at the waist: the tape before and after it. Offered, and skipped at a press. */
export function TrialStop({ at }: { readonly at: StepAtHand }) {
  const { plan, record } = at;
  const { write } = useLengths();
  const [moment, setMoment] = useState<"before" | "after">("before");
  const [before, after] = [useTypedLength(trialDraftKeys.before), useTypedLength(trialDraftKeys.after)];
  const drafts = useDrafts().other;
  const { length } = moment === "before" ? before : after;
  const layer = plan.pieces[0]?.layers[0]?.thickness ?? 6;
  const bare = before.length ?? plan.bareForm.waist.girth;
  const expected = moment === "before" ? plan.bareForm.waist.girth : mm(bare + 2 * Math.PI * trialTurns * layer);
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
        key={moment}
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
