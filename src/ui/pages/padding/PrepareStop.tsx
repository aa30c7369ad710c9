import type { ReactNode } from "react";
import type { Plan } from "../../../core/plan/plan";
import { LengthField } from "../../kit/field/LengthField";
import { useBenchField } from "../../kit/measure/useMeasurement";
import { placeAddress } from "../../kit/place";
import { linesWords } from "../../../text/linesAtForm";
import { useDispatch, useLengths } from "../../kit/useStore";
import { HandSteps, StopFrame } from "./StopFrame";

/** The form made ready: the base, the bra, plumb; and its nape above the floor, if somebody measures it. */
export function PrepareStop({ plan, later }: { readonly plan: Plan; readonly later: ReactNode }) {
  const dispatch = useDispatch();
  const { prepare, region, trail } = linesWords;
  const isGuessed = plan.levels.some(({ drop }) => drop.kind === "estimated");
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
          {prepare.heightsFirst} <a href={placeAddress("body", "napeHeight")}>{prepare.toHeights}</a>
        </p>
      ) : null}
      <HandSteps steps={prepare.steps} />
      <NapeField />
    </StopFrame>
  );
}

/** With the form's nape above the floor every line has its height for the pointer, and nobody subtracts. */
function NapeField() {
  const { unit, step } = useLengths();
  const { field, input } = useBenchField("form", "napeHeight", 0);
  const { nape } = linesWords.prepare;
  return (
    <div className="stop-nape">
      <LengthField label={nape.label} state={field} unit={unit} step={step} inputRef={input} />
      <p className="quiet">{nape.why}</p>
    </div>
  );
}
