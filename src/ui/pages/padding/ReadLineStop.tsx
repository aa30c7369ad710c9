import { useMemo } from "react";
import { type LineAtForm, type LinePart, lineParts } from "../../../app/linesAtForm";
import type { LevelName } from "../../../core/body/vocabulary";
import { Drawing } from "../../drawing/Drawing";
import { formTorso } from "../../drawing/torso/planTorso";
import { FractionPad } from "../../field/FractionPad";
import { LengthField } from "../../field/LengthField";
import { usePadInto } from "../../field/usePadInto";
import { levelLineNames, linesWords } from "../../text/linesAtForm";
import { touchQuery, useMediaQuery } from "../../useMediaQuery";
import { useLengths } from "../../useStore";
import type { LineStopProps } from "./MarkStop";
import { readLineScene } from "./readLineScene";
import { StopFrame } from "./StopFrame";
import { useLineReading } from "./useLineReading";

/** One reading of the bare form on one of the person's lines; what is typed goes there. */
export interface ReadLineStopProps extends LineStopProps {
  readonly part: LinePart;
  readonly onSkip: () => void;
}

export function ReadLineStop({ plan, lines, level, part, later, onSkip }: ReadLineStopProps) {
  const { read, region, trail } = linesWords;
  const line = levelLineNames[level];
  const shape = useMemo(() => formTorso(plan.levels), [plan]);
  const scene = readLineScene({ shape, level, part, title: read.title(part, line), description: read.how(part) });
  const reading = useLineReading(plan, lines, level, part);
  return (
    <StopFrame
      region={region}
      trail={trail}
      act="read"
      kind="reading"
      title={read.title(part, line)}
      sentence={read.how(part)}
      picture={<Drawing scene={scene} />}
      slab={{ words: reading.save, press: reading.keep, isReady: reading.isReady }}
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
      <LineParts lines={lines} level={level} part={part} />
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
  const { key, state, keep, expected } = reading;
  return (
    <>
      <div className="line-field">
        <LengthField
          label={label}
          labelShown={false}
          state={state}
          unit={unit}
          step={step}
          size="large"
          padInstead={isTouch}
          onEnter={keep}
        />
        {expected === null ? null : <p className="quiet">{linesWords.read.estimated(expected)}</p>}
      </div>
      <FractionPad unit={unit} onKey={usePadInto(key)} />
    </>
  );
}

/** The three readings of one line side by side, filled in as they come. */
function LineParts({
  lines,
  level,
  part,
}: {
  readonly lines: readonly LineAtForm[];
  readonly level: LevelName;
  readonly part: LinePart;
}) {
  const { write } = useLengths();
  const line = lines.find((item) => item.level === level);
  return (
    <ul className="line-parts">
      {lineParts.map((name) => {
        const length = line?.read[name];
        return (
          <li key={name} aria-current={name === part ? "step" : undefined}>
            <span>{linesWords.read.part(name)}</span>
            <strong>{length === undefined ? "–" : write(length)}</strong>
          </li>
        );
      })}
    </ul>
  );
}
