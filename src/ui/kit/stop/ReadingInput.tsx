import { useCallback, useEffect, useRef, useState } from "react";
import { slippedUnit } from "../../../app/progress/lineProblem";
import { type Band, bandOf, targetMarks } from "../../../app/steps/tapeKeys";
import { fineStep, parseLength, tapeStep } from "../../../core/lengthText";
import type { Millimetres } from "../../../core/units";
import { FractionPad, usePadInto } from "../field/FractionPad";
import { LengthField } from "../field/LengthField";
import { lengthFieldState } from "../../../app/session/lengthFieldState";
import { LengthFigure } from "../LengthFigure";
import { measuringWords } from "../../../text/measuring";
import { shownLength } from "../../../text/shownLength";
import { bandWords } from "../../../text/stops";
import { phoneQuery, touchQuery, useMediaQuery } from "../useScreen";
import { useDispatch, useDraft, useLengths } from "../useStore";
import { TapeKeys } from "./TapeKeys";

interface ReadingInputProps {
  /** Where its text is kept while it is typed. */
  readonly draftKey: string;
  readonly label: string;
  readonly expected: Millimetres;
  readonly isRange: boolean;
  readonly onEnter: () => void;
}

/** What is written for a reading, and what it means. */
export function useTypedLength(draftKey: string): {
  readonly text: string | undefined;
  readonly length: Millimetres | null;
} {
  const { unit } = useLengths();
  const text = useDraft("other", draftKey);
  const typed = text === undefined ? null : parseLength(text, unit);
  return { text, length: typed?.ok ? typed.value : null };
}

/** The keys of the tape and the field, which both write the reading that is asked; a figure typed anywhere goes there. */
export function ReadingInput({ draftKey, label, expected, isRange, onEnter }: ReadingInputProps) {
  const { unit, step } = useLengths();
  const dispatch = useDispatch();
  const [isPad, setPad] = useState(false);
  const [isTouch, isPhone] = [useMediaQuery(touchQuery), useMediaQuery(phoneQuery)];
  const { text: draft, length } = useTypedLength(draftKey);
  const input = useRef<HTMLInputElement>(null);
  const write = useCallback(
    (text: string | null) => dispatch({ does: "draft", of: "other", key: draftKey, text }),
    [dispatch, draftKey],
  );
  const press = usePadInto(draftKey);
  useFiguresInto(input);
  const state = lengthFieldState({ entry: undefined, draft, unit, step, onDraft: write, onCommit: () => {} });
  const slip = length === null ? null : slippedUnit(length, expected, unit);
  const another = isTouch ? (
    <button type="button" className="patch patch-plain" aria-pressed={isPad} onClick={() => setPad(!isPad)}>
      {isPad ? bandWords.keys : bandWords.another}
    </button>
  ) : null;
  return (
    <div className="reading-input">
      <div className="reading-expected">
        <p className="reading-figure">
          <LengthFigure length={expected} step={step} estimated={!isRange} />
        </p>
        <p>
          {bandWords.expected} {isRange ? bandWords.tolerance(unit === "in" ? "1/4 in" : "6 mm") : null}
        </p>
        <div className="reading-typed">
          <LengthField
            label={label}
            look="large"
            state={state}
            padInstead={isTouch}
            inputRef={input}
            onEnter={onEnter}
          />
          {slip === null ? null : (
            <button type="button" className="patch" onClick={() => write(`${(draft ?? "").trim()} ${slip}`)}>
              {measuringWords.theyAre(slip, 1)}
            </button>
          )}
        </div>
      </div>
      {isPad ? (
        <>
          <FractionPad unit={unit} onKey={press} />
          {another}
        </>
      ) : (
        <TapeKeys
          key={draftKey}
          around={expected}
          isRange={isRange}
          rows={isPhone ? 2 : 3}
          value={length}
          onPick={write}
        >
          {another}
        </TapeKeys>
      )}
    </div>
  );
}

/** A figure typed by a keyboard goes to the reading that is asked, wherever the focus is; inside another field it stays there. */
function useFiguresInto(input: { readonly current: HTMLInputElement | null }): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const { key, target, ctrlKey, metaKey, altKey } = event;
      const isElsewhere = target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
      if (/^\d$/.test(key) && !ctrlKey && !metaKey && !altKey && !isElsewhere) input.current?.focus();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [input]);
}

/** As finely as the keys of the tape are marked. */
const markStep = { in: tapeStep.in, cm: fineStep.cm, mm: fineStep.mm } as const;

interface BandsProps {
  readonly expected: Millimetres;
  readonly value: Millimetres | null;
}

/** Less, on target, more, in the order of the tape, each with what this step makes of it. */
export function Bands({ expected, value }: BandsProps) {
  const { unit } = useLengths();
  const [low, high] = targetMarks(expected, unit).map((mark) => shownLength(mark, markStep[unit])) as [string, string];
  const bands: readonly (readonly [Band, string])[] = [
    ["less", bandWords.less(low)],
    ["onTarget", bandWords.between(low, high)],
    ["more", bandWords.more(high)],
  ];
  const now = value === null ? null : bandOf(value, expected);
  return (
    <ul className="bands">
      {bands.map(([band, range]) => (
        <li key={band} className={`band band-${band}`} aria-current={now === band ? "true" : undefined}>
          <strong>{range}</strong>
          <span>
            <span className="band-short">{bandWords.short[band]} </span>
            {bandWords.make[band]}
          </span>
        </li>
      ))}
    </ul>
  );
}
