import { memo, useId, useMemo } from "react";
import { isConfirmed, type LevelNow, readingName, type TapePart } from "../../../app/progress/padProgress";
import { readingDraftKey } from "../../../app/session/commands";
import type { Reading } from "../../../core/body/reading";
import type { LevelName } from "../../../core/body/vocabulary";
import { formatLength } from "../../../core/lengthText";
import { paddingWords, tapePartNames } from "../../../text/padding";
import { levelWords } from "../../../text/pictures";
import { remaining, remainingWords, standingOf } from "../../../text/remaining";
import { Drawing } from "../../drawing/Drawing";
import { lengthWriter } from "../../../text/lengthWriter";
import type { Scene } from "../../drawing/scene";
import { tapeGround, type TapePicture, tapeScene } from "../../drawing/tapeScene";
import { LengthFigure } from "../../kit/LengthFigure";
import { LengthField } from "../../kit/field/LengthField";
import { lengthFieldState } from "../../../app/session/lengthFieldState";
import { useLater } from "../../kit/useSoon";
import { useDispatch, useLengths } from "../../kit/useStore";
import { useTypedReading } from "./readingsOverCover";

/** One stretch of the tape: wanted, now, left to go, and the field for what it reads. */
interface ReadingLineProps {
  readonly level: LevelName;
  readonly part: TapePart;
  readonly wanted: Reading;
  /** What the tape reads at this level without what is being typed. */
  readonly kept: LevelNow;
  /** How much of the tape is drawn (mm): the same for the stretches of one level. */
  readonly span: number;
  /** What was typed last, where the form with these pieces on cannot read that, and why. */
  readonly refusedText?: string | undefined;
  readonly refusedWhy?: string | undefined;
  /** A finger is at hand, and the pad with it. */
  readonly isTouch: boolean;
  /** Told when the caret comes into its field. */
  readonly onPart: (part: TapePart) => void;
}

export const ReadingLine = memo(function ReadingLine(line: ReadingLineProps) {
  const { level, part, wanted, kept, span, isTouch, refusedText, refusedWhy, onPart } = line;
  const { draft, now } = useTypedReading(level, part, kept);
  const leftId = useId();
  const { unit, step, write } = useLengths();
  const reads = now.kind === "read" && draft === undefined ? formatLength(now.value, step, "bare") : undefined;
  const dispatch = useDispatch();
  const name = readingName(level, part);
  const key = readingDraftKey(name);
  const left = remaining(wanted.value, now.value);
  const words = remainingWords({ part, wanted: wanted.value, now: now.value, standing: standingOf(now) }, step);
  const tape = useTapeScene({
    name: tapePartNames[part],
    wanted: wanted.value,
    now: now.value,
    isEstimated: wanted.kind === "estimated",
    span,
    words,
    lengths: lengthWriter(unit, step),
  });
  const field = lengthFieldState({
    entry: refusedText ?? reads,
    draft,
    unit,
    step,
    onDraft: (text) => dispatch({ does: "draft", of: "other", key, text }),
    onCommit: (text) => dispatch({ does: "read", name, text, over: "cover", at: new Date().toISOString() }),
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
        look="small"
        state={field}
        problem={draft === undefined ? refusedWhy : undefined}
        ghost={now.kind === "follows" ? paddingWords.follows(write(now.value)) : paddingWords.about(write(now.value))}
        padInstead={isTouch}
        describedBy={leftId}
        onFocus={() => onPart(part)}
      />
      <div className="reading-tape">
        <Drawing scene={tape} hidden />
      </div>
      <LeftWords id={leftId} words={words} isUnread={!isConfirmed(now)} />
    </div>
  );
});

/**
 * What is left to go, in words. They stand in a place of their own whose height they do not change themselves: it is
 * made anew a frame after them, so that the frame that shows a letter need not lay out the page.
 */
interface LeftWordsProps {
  /** So that the field beside them is described by them. */
  readonly id: string;
  readonly words: string;
  /** Nobody has read this stretch yet: the words are lighter, and may need less room. */
  readonly isUnread: boolean;
}

function LeftWords({ id, words, isUnread }: LeftWordsProps) {
  const isLight = useLater(isUnread);
  return (
    <div className={`reading-left-place${isLight ? " reading-left-light" : ""}`} data-words={useLater(words)}>
      <p className="reading-left">
        <span className="reading-mark" aria-hidden />
        <span id={id} className="reading-left-words">
          {words}
        </span>
      </p>
    </div>
  );
}

/** A drawn tape of which, while a reading is typed, only what the letter moves is made anew. */
function useTapeScene({ name, wanted, now, isEstimated, span, words, lengths }: TapePicture): Scene {
  const ground = useMemo(
    () => tapeGround({ wanted, isEstimated, span, lengths }),
    [wanted, isEstimated, span, lengths],
  );
  return useMemo(
    () => tapeScene({ name, wanted, now, isEstimated, span, words, lengths }, ground),
    [name, wanted, now, isEstimated, span, words, lengths, ground],
  );
}
