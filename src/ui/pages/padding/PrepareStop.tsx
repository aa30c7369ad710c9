import type { ReactNode } from "react";
import { stepFacts } from "../../../app/steps/stepFacts";
import type { Plan } from "../../../core/plan/plan";
import { formKindWords, readyWords } from "../../../text/formKinds";
import { linesWords } from "../../../text/linesAtForm";
import { LengthField } from "../../kit/field/LengthField";
import { useBenchField } from "../../kit/measure/useMeasurement";
import { pageAddress } from "../../kit/page";
import { useDerived } from "../../kit/useDerived";
import { useDispatch, useFitting, useLengths } from "../../kit/useStore";
import { HandSteps, StopFrame } from "../../kit/stop/StopFrame";

/** The form made ready: the base, the bra, plumb; and its nape above the floor, if somebody measures it. */
export function PrepareStop({ plan, later }: { readonly plan: Plan; readonly later: ReactNode }) {
  const dispatch = useDispatch();
  const { prepare, region, trail } = linesWords;
  const body = useDerived().lengths?.body ?? {};
  const fitting = useFitting();
  const { step: lengths } = useLengths();
  const ready = readyWords(stepFacts(plan, body, fitting).form, lengths);
  const ask = fitting.form.kind === undefined ? <a href={pageAddress("form")}>{formKindWords.ask}</a> : null;
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
      ways={
        <>
          {later}
          {isGuessed ? null : ask}
        </>
      }
      slab={{
        words: prepare.done,
        press: () =>
          dispatch({ does: "record", entry: { did: "prepared", what: "form", at: new Date().toISOString() } }),
        isReady: true,
      }}
    >
      {isGuessed ? (
        <p className="stop-news">
          {prepare.heightsFirst} <a href={pageAddress("body", "napeHeight")}>{prepare.toHeights}</a> {ask}
        </p>
      ) : null}
      <HandSteps steps={prepare.steps} />
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
