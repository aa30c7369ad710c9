import { type NowReading, readingName, type TapePart } from "../../app/padProgress";
import { readingDraftKey } from "../../app/commands";
import type { Reading } from "../../core/body/reading";
import type { LevelName } from "../../core/body/vocabulary";
import { LengthField } from "../field/LengthField";
import { lengthFieldState } from "../field/lengthFieldState";
import { LengthFigure } from "../LengthFigure";
import { formatRemaining, remaining } from "../readout/remaining";
import { paddingWords, remainingSentence, tapePartNames } from "../text/padding";
import { levelWords } from "../text/pictures";
import { touchQuery, useMediaQuery } from "../useMediaQuery";
import { useDispatch, useLengths } from "../useStore";

/** One stretch of the tape: wanted, now, left to go, and the field for what it reads. */
export interface ReadingLineProps {
  readonly level: LevelName;
  readonly part: TapePart;
  readonly wanted: Reading;
  readonly now: NowReading;
  readonly draft: string | undefined;
  readonly isLastOn: boolean;
  readonly onActive: () => void;
}

export function ReadingLine({ level, part, wanted, now, draft, isLastOn, onActive }: ReadingLineProps) {
  const { unit, step, write } = useLengths();
  const dispatch = useDispatch();
  const isTouch = useMediaQuery(touchQuery);
  const name = readingName(level, part);
  const key = readingDraftKey(name);
  const left = remaining(wanted.value, now.value);
  const field = lengthFieldState({
    entry: undefined,
    draft,
    unit,
    step,
    onDraft: (text) => dispatch({ does: "draft", of: "other", key, text }),
    onCommit: (text) => dispatch({ does: "read", name, text, at: new Date().toISOString() }),
  });

  return (
    <div className={`reading reading-${left.kind}`}>
      <p className="reading-part">{tapePartNames[part]}</p>
      <p className="reading-left">
        <span className="reading-mark" aria-hidden />
        {remainingSentence(left.kind, formatRemaining(left.amount, unit), part, isLastOn)}
      </p>
      <dl className="reading-figures">
        <div>
          <dt>{paddingWords.wanted}</dt>
          <dd>
            <LengthFigure length={wanted.value} step={step} estimated={wanted.kind === "estimated"} />
          </dd>
        </div>
        <div>
          <dt>{now.kind === "expected" ? paddingWords.expected : paddingWords.now}</dt>
          <dd>
            <LengthFigure length={now.value} step={step} estimated={now.kind === "expected"} />
          </dd>
        </div>
      </dl>
      <LengthField
        label={paddingWords.reading(levelWords[level], tapePartNames[part])}
        labelShown={false}
        state={field}
        unit={unit}
        step={step}
        ghost={paddingWords.expectedNow(write(now.value))}
        padInstead={isTouch}
        onFocus={onActive}
      />
    </div>
  );
}
