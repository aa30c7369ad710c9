import { memo, useMemo } from "react";
import { isConfirmed, type NowReading, readingName, type TapePart } from "../../app/padProgress";
import { readingDraftKey } from "../../app/commands";
import { formatLength } from "../../core/lengthText";
import type { Reading } from "../../core/body/reading";
import type { LevelName } from "../../core/body/vocabulary";
import { Drawing } from "../drawing/Drawing";
import { lengthWriter } from "../drawing/lengthWriter";
import { tapeScene } from "../drawing/tapeScene";
import { LengthField } from "../field/LengthField";
import { lengthFieldState } from "../field/lengthFieldState";
import { LengthFigure } from "../LengthFigure";
import { remaining, remainingText } from "../readout/remaining";
import { standingOf } from "../readout/standing";
import { paddingWords, remainingSentence, tapePartNames } from "../text/padding";
import { levelWords } from "../text/pictures";
import { touchQuery, useMediaQuery } from "../useMediaQuery";
import { useDispatch, useLengths } from "../useStore";
import { overEntry, type ReadOver } from "./useReadingsKept";

/** One stretch of the tape: wanted, now, left to go, and the field for what it reads. */
export interface ReadingLineProps {
  readonly level: LevelName;
  readonly part: TapePart;
  readonly wanted: Reading;
  readonly now: NowReading;
  readonly draft: string | undefined;
  readonly isLastOn: boolean;
  readonly over: ReadOver;
  /** How much of the tape is drawn (mm): the same for the stretches of one level. */
  readonly span: number;
  /** Told when the caret comes into its field. */
  readonly onPart: (part: TapePart) => void;
}

/** A letter in one stretch draws the others anew only if what they read changes with it. */
export const ReadingLine = memo(Line, isSameLine);

function isSameLine(before: ReadingLineProps, after: ReadingLineProps): boolean {
  const names = ["level", "part", "wanted", "draft", "isLastOn", "over", "span", "onPart"] as const;
  const isSameReading = before.now.kind === after.now.kind && before.now.value === after.now.value;
  return isSameReading && names.every((name) => Object.is(before[name], after[name]));
}

function Line({ level, part, wanted, now, draft, isLastOn, over, span, onPart }: ReadingLineProps) {
  const { unit, step, write } = useLengths();
  const reads = now.kind === "read" && draft === undefined ? formatLength(now.value, step, "bare") : undefined;
  const dispatch = useDispatch();
  const isTouch = useMediaQuery(touchQuery);
  const name = readingName(level, part);
  const key = readingDraftKey(name);
  const left = remaining(wanted.value, now.value);
  const amount = remainingText(wanted.value, now.value, step);
  const words = remainingSentence(left.kind, amount, part, standingOf(now), isLastOn);
  const tape = useMemo(
    () =>
      tapeScene({
        name: tapePartNames[part],
        wanted: wanted.value,
        now: now.value,
        isEstimated: wanted.kind === "estimated",
        span,
        words,
        lengths: lengthWriter(unit),
      }),
    [part, wanted, now.value, span, words, unit],
  );
  const field = lengthFieldState({
    entry: reads,
    draft,
    unit,
    step,
    onDraft: (text) => dispatch({ does: "draft", of: "other", key, text }),
    onCommit: (text) => dispatch({ does: "read", name, text, ...overEntry(over), at: new Date().toISOString() }),
  });

  return (
    <div className={`reading reading-${left.kind}${isConfirmed(now) ? "" : " reading-unread"}`}>
      <p className="reading-part">{tapePartNames[part]}</p>
      <p className="reading-wanted">
        <span className="quiet small">{paddingWords.wanted} </span>
        <LengthFigure length={wanted.value} step={step} estimated={wanted.kind === "estimated"} unitShown={false} />
      </p>
      <LengthField
        label={paddingWords.reading(levelWords[level], tapePartNames[part])}
        labelShown={false}
        state={field}
        unit={unit}
        step={step}
        ghost={now.kind === "follows" ? paddingWords.follows(write(now.value)) : paddingWords.about(write(now.value))}
        padInstead={isTouch}
        onFocus={() => onPart(part)}
      />
      <div className="reading-tape">
        <Drawing scene={tape} hidden />
      </div>
      <p className="reading-left">
        <span className="reading-mark" aria-hidden />
        {words}
      </p>
    </div>
  );
}
