import { type ReactNode, useMemo } from "react";
import type { LineReadingAsked } from "../../../app/progress/linesAtForm";
import type { LinePart } from "../../../core/form/linePart";
import type { LineChange } from "../../../core/plan/lineChange";
import { Drawing } from "../../drawing/Drawing";
import { formTorso } from "../../drawing/torso/torsoShape";
import { readLineScene } from "../../drawing/torso/readLineScene";
import { FractionPad, usePadInto } from "../../kit/field/FractionPad";
import { LengthField } from "../../kit/field/LengthField";
import { linesWords } from "../../../text/linesAtForm";
import { lineWords } from "../../../text/pictures";
import { measuringWords } from "../../../text/measuring";
import { measurementProblemText } from "../../../text/problems";
import { unbroken } from "../../../text/shownLength";
import { touchQuery, useMediaQuery } from "../../kit/useScreen";
import { useLengths } from "../../kit/useStore";
import { LineChoice, LineParts } from "./LineChoice";
import type { LineStopProps } from "./MarkStop";
import { StopFrame } from "../../kit/stop/StopFrame";
import { askedAfter, useLineReading } from "./useLineReading";

/** One reading of the bare form on one of the person's lines; what is typed goes there. */
interface ReadLineStopProps extends LineStopProps {
  readonly part: LinePart;
  readonly news: ReactNode;
  readonly skipped: readonly LineReadingAsked[];
  readonly onSkip: () => void;
  readonly onChoose: (asked: LineReadingAsked) => void;
  readonly onKept: (change: LineChange) => void;
}

export function ReadLineStop(props: ReadLineStopProps) {
  const { plan, lines, level, part, later, news, skipped, onSkip, onChoose, onKept } = props;
  const { read, region, trail } = linesWords;
  const line = lineWords[level];
  const shape = useMemo(() => formTorso(plan.levels), [plan]);
  const scene = readLineScene({ shape, level, part, title: read.title(part, line), description: read.how(part) });
  const after = askedAfter(lines, { level, part }, skipped);
  const reading = useLineReading({ plan, lines, level, part, after, onKept });
  return (
    <StopFrame
      region={region}
      trail={trail}
      act="read"
      kind="reading"
      title={read.title(part, line)}
      sentence={read.how(part)}
      picture={<Drawing scene={scene} />}
      news={news}
      route={<LineChoice lines={lines} level={level} onChoose={onChoose} />}
      slab={{ words: reading.words, press: reading.keep, isReady: reading.isReady }}
      ways={
        <>
          {part === "girth" ? null : (
            <button type="button" className="patch patch-plain" onClick={onSkip}>
              {read.skip}
            </button>
          )}
          {later}
        </>
      }
    >
      <LineParts lines={lines} level={level} part={part} onChoose={onChoose} />
      <LineField reading={reading} label={read.field(line, part)} />
    </StopFrame>
  );
}

interface LineFieldProps {
  readonly reading: ReturnType<typeof useLineReading>;
  readonly label: string;
}

function LineField({ reading, label }: LineFieldProps) {
  const { unit, step } = useLengths();
  const isTouch = useMediaQuery(touchQuery);
  const { key, state, keep, expected, problem, slip } = reading;
  const press = usePadInto(key);
  return (
    <>
      <div className="line-field">
        <LengthField
          label={label}
          look="large"
          state={state}
          problem={problem === null ? undefined : unbroken(measurementProblemText(problem, step))}
          padInstead={isTouch}
          onEnter={keep}
        />
        {slip === null ? (
          <p className="quiet">{linesWords.read.estimated(expected)}</p>
        ) : (
          <button type="button" className="patch" onClick={slip.mend}>
            {measuringWords.theyAre(slip.unit, 1)}
          </button>
        )}
      </div>
      {isTouch ? <FractionPad unit={unit} onKey={press} /> : null}
    </>
  );
}
