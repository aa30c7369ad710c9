import { useCallback, useLayoutEffect, useRef, useState } from "react";
import { slippedUnit } from "../../../app/progress/lineProblem";
import type { Millimetres } from "../../../core/units";
import { FractionPad, usePadInto } from "../field/FractionPad";
import { LengthField } from "../field/LengthField";
import { lengthFieldState } from "../../../app/session/lengthFieldState";
import { LengthFigure } from "../LengthFigure";
import { measuringWords } from "../../../text/measuring";
import { bandWords } from "../../../text/stops";
import { phoneQuery, touchQuery, useMediaQuery } from "../useScreen";
import { useDispatch, useLengths } from "../useStore";
import { TapeKeys } from "./TapeKeys";
import { useTypedLength } from "./useTypedLength";

interface ReadingInputProps {
  /** Where its text is kept while it is typed. */
  readonly draftKey: string;
  readonly label: string;
  readonly expected: Millimetres;
  readonly isRange: boolean;
  readonly onEnter: () => void;
}

/**
 * The keys of the tape and the field, which both write the reading that is asked; a figure typed anywhere goes there. A
 * letter draws the field, and of the tape the mark that it names. Where another reading is asked, the field stays.
 */
export function ReadingInput({ draftKey, label, expected, isRange, onEnter }: ReadingInputProps) {
  const { unit, step } = useLengths();
  const [padFor, setPadFor] = useState<string | null>(null);
  const isPad = padFor === draftKey;
  const [isTouch, isPhone] = [useMediaQuery(touchQuery), useMediaQuery(phoneQuery)];
  const write = useWriteDraft(draftKey);
  const press = usePadInto(draftKey);
  const another = isTouch ? (
    <button
      type="button"
      className="patch patch-plain"
      aria-pressed={isPad}
      onClick={() => setPadFor(isPad ? null : draftKey)}
    >
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
        <TypedField draftKey={draftKey} label={label} expected={expected} isTouch={isTouch} onEnter={onEnter} />
      </div>
      {isPad ? (
        <>
          <FractionPad unit={unit} onKey={press} />
          {another}
        </>
      ) : (
        <TapeKeys draftKey={draftKey} around={expected} isRange={isRange} rows={isPhone ? 2 : 3} onPick={write}>
          {another}
        </TapeKeys>
      )}
    </div>
  );
}

function useWriteDraft(draftKey: string): (text: string | null) => void {
  const dispatch = useDispatch();
  return useCallback((text) => dispatch({ does: "draft", of: "other", key: draftKey, text }), [dispatch, draftKey]);
}

interface TypedFieldProps extends Pick<ReadingInputProps, "draftKey" | "label" | "expected" | "onEnter"> {
  readonly isTouch: boolean;
}

/** The field itself, and below it the other unit where that is what was meant. */
function TypedField({ draftKey, label, expected, isTouch, onEnter }: TypedFieldProps) {
  const { unit, step } = useLengths();
  const { text: draft, length } = useTypedLength(draftKey);
  const input = useRef<HTMLInputElement>(null);
  const write = useWriteDraft(draftKey);
  useFiguresInto(input);
  const state = lengthFieldState({ entry: undefined, draft, unit, step, onDraft: write, onCommit: () => {} });
  const slip = length === null ? null : slippedUnit(length, expected, unit);
  return (
    <div className="reading-typed">
      <LengthField label={label} look="large" state={state} padInstead={isTouch} inputRef={input} onEnter={onEnter} />
      {slip === null ? null : (
        <button type="button" className="patch" onClick={() => write(`${(draft ?? "").trim()} ${slip}`)}>
          {measuringWords.theyAre(slip, 1)}
        </button>
      )}
    </div>
  );
}

/** A figure typed by a keyboard goes to the reading that is asked, wherever the focus is; inside another field it stays there. */
function useFiguresInto(input: { readonly current: HTMLInputElement | null }): void {
  // Within the commit that shows the field: a figure typed right then is not missed.
  useLayoutEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const { key, target, ctrlKey, metaKey, altKey } = event;
      const isElsewhere = target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
      if (/^\d$/.test(key) && !ctrlKey && !metaKey && !altKey && !isElsewhere) input.current?.focus();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [input]);
}
