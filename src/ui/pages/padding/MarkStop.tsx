import type { ReactNode } from "react";
import type { LineAtForm } from "../../../app/progress/linesAtForm";
import type { LevelName } from "../../../core/body/vocabulary";
import type { Plan } from "../../../core/plan/plan";
import { type Millimetres, mm } from "../../../core/units";
import { MarkPicture } from "../../drawing/torso/MarkPicture";
import { pageAddress } from "../../kit/page";
import { formMatterText } from "../../../text/formMatters";
import { linesWords, markSpacing } from "../../../text/linesAtForm";
import { lineWords } from "../../../text/pictures";
import { unbroken } from "../../../text/shownLength";
import { phoneQuery, useMediaQuery } from "../../kit/useScreen";
import { useDerived } from "../../kit/useDerived";
import { useDispatch, useFitting, useLengths } from "../../kit/useStore";
import { HandSteps, StopFrame } from "../../kit/stop/StopFrame";

/** One of the person's level lines to be marked on the form: where it lies, and how two hands find it. */
export interface LineStopProps {
  readonly plan: Plan;
  readonly lines: readonly LineAtForm[];
  readonly level: LevelName;
  readonly later: ReactNode;
}

export function MarkStop({ plan, lines, level, later }: LineStopProps) {
  const dispatch = useDispatch();
  const { step, write } = useLengths();
  const isPhone = useMediaQuery(phoneQuery);
  const { mark, region, trail } = linesWords;
  const depth = lines.find((item) => item.level === level)?.depth ?? mm(0);
  const isEstimated = plan.levels.some(
    ({ name, depthBelowNape }) => name === level && depthBelowNape.kind === "estimated",
  );
  const line = lineWords[level];
  const { lengths } = useDerived();
  const napeHeight = lengths?.form.measured.napeHeight ?? null;
  return (
    <StopFrame
      region={region}
      trail={trail}
      act="mark"
      kind="working"
      title={mark.title(line)}
      sentence={
        <>
          {mark.below(write(depth))} {isEstimated ? <Estimated level={level} /> : null}
        </>
      }
      picture={
        <MarkPicture
          plan={plan}
          lines={lines}
          level={level}
          step={step}
          isNarrow={isPhone}
          textSize={isPhone ? phoneText : 32}
        />
      }
      ways={later}
      slab={{
        words: mark.done(line),
        press: () => dispatch({ does: "markLine", level, depth, at: new Date().toISOString() }),
        isReady: true,
      }}
    >
      <FormMatters plan={plan} level={level} />
      <MarkSteps depth={depth} napeHeight={napeHeight} />
    </StopFrame>
  );
}

/** Letters of the picture on a phone (mm of the drawing). */
const phoneText = 40;

/** Nobody measured this height: said, with the way to the field. */
function Estimated({ level }: { readonly level: LevelName }) {
  const { mark } = linesWords;
  const { body } = useFitting();
  // A height means nothing without the nape's.
  const asked = body.napeHeight === undefined ? "napeHeight" : (`${level}Height` as const);
  return (
    <>
      {mark.estimated} <a href={pageAddress("body", asked)}>{mark.measureIt}</a>
    </>
  );
}

/** A line that lies beyond the form cannot be marked: what can be done about it is said here, at once. */
function FormMatters({ plan, level }: Pick<LineStopProps, "plan" | "level">) {
  const { step } = useLengths();
  const here = plan.matters.filter((matter) => matter.level === level && matter.what === "belowForm");
  return here.map((matter) => (
    <p key={matter.what} className="stop-news">
      {unbroken(formMatterText(matter, step))}
    </p>
  ));
}

interface MarkStepsProps {
  readonly depth: Millimetres;
  /** The form's nape above the floor, where it was measured. */
  readonly napeHeight: Millimetres | null;
}

function MarkSteps({ depth, napeHeight }: MarkStepsProps) {
  const { unit, write } = useLengths();
  const { mark } = linesWords;
  const below = write(depth);
  const pointer =
    napeHeight === null
      ? mark.pointer.unknown(below)
      : mark.pointer.known(write(napeHeight), below, write(mm(napeHeight - depth)));
  return (
    <>
      <HandSteps
        steps={[
          { title: mark.pointer.title, text: pointer },
          { title: mark.turn.title, text: mark.turn.text(write(markSpacing[unit])) },
          { title: mark.tape.title, text: mark.tape.text },
        ]}
      />
      <p className="quiet small">{mark.shell}</p>
    </>
  );
}
