import { useEffect, useId, useRef, useState } from "react";
import { isContradiction, type MeasurementProblem } from "../../core/body/plausibility";
import type { MeasurementName } from "../../core/body/vocabulary";
import { FractionPad } from "../field/FractionPad";
import { LengthField } from "../field/LengthField";
import { lengthFieldState } from "../field/lengthFieldState";
import { pressKey } from "../field/padKeys";
import { fieldWords } from "../text/field";
import { measurementTexts } from "../text/measurements";
import { measuringWords } from "../text/measuring";
import { touchQuery, useMediaQuery, wideQuery } from "../useMediaQuery";
import { derivationOf } from "../useDerived";
import { useDispatch, useDrafts, useFitting, useLengths, useStoreItself } from "../useStore";
import { MeasureGuide, MeasureMore } from "./MeasureGuide";
import { MeasureProblems } from "./MeasureProblems";
import { useMeasurement } from "./useMeasurement";

/** The bench: one measurement at hand, how to take it, the field and the pad, and the way to the next. */
export interface MeasureBenchProps {
  readonly whose: "body" | "form";
  readonly name: MeasurementName;
  readonly next: MeasurementName | undefined;
  /** Changes each time a person came here on purpose, so that the field takes the caret. */
  readonly focusTurn: number;
  readonly onNext: () => void;
  readonly onLeave: () => void;
}

export function MeasureBench({ whose, name, next, focusTurn, onNext, onLeave }: MeasureBenchProps) {
  const { label } = measurementTexts[name];
  const { unit, step } = useLengths();
  const { field, input } = useBenchField(whose, name, focusTurn);
  const isTouch = useMediaQuery(touchQuery);
  const isWide = useMediaQuery(wideQuery);
  const [padInstead, setPadInstead] = useState(isTouch);
  const known = useMeasurement(whose, name);
  const problemsId = useId();
  const stays = useStaysAtSlip(whose, name);
  const goOn = () => {
    field.commit();
    if (stays()) input.current?.focus();
    else onNext();
  };

  const entry = (
    <>
      <div className="bench-entry">
        <LengthField
          label={label}
          labelShown={false}
          state={field}
          unit={unit}
          step={step}
          size="large"
          ghost={fieldWords.examples[unit]}
          padInstead={padInstead}
          inputRef={input}
          describedBy={problemsId}
          onEnter={goOn}
          onEscape={onLeave}
        />
        <button type="button" className="patch patch-main bench-next" onClick={goOn}>
          {next === undefined ? measuringWords.last : measuringWords.next(measurementTexts[next].label)}
        </button>
      </div>
      <Known known={known} />
      <MeasureProblems whose={whose} name={name} id={problemsId} />
      <FractionPad unit={unit} onKey={(key) => field.type(pressKey(field.text, key, !field.isDraft))} />
      {isTouch ? (
        <button type="button" className="patch patch-plain" onClick={() => setPadInstead(!padInstead)}>
          {padInstead ? fieldWords.useKeyboard : fieldWords.usePad}
        </button>
      ) : null}
    </>
  );
  return (
    <section className="bench" aria-label={label}>
      <h2 className="bench-title">{label}</h2>
      {isWide ? <MeasureGuide whose={whose} name={name} /> : null}
      {entry}
      {isWide ? null : <MeasureGuide whose={whose} name={name} />}
      <MeasureMore whose={whose} name={name} />
    </section>
  );
}

function useBenchField(whose: "body" | "form", name: MeasurementName, focusTurn: number) {
  const input = useRef<HTMLInputElement>(null);
  const fitting = useFitting();
  const drafts = useDrafts();
  const store = useStoreItself();
  const dispatch = useDispatch();
  const { unit, step } = useLengths();

  useEffect(() => {
    if (focusTurn > 0) input.current?.focus();
  }, [focusTurn]);

  // Whoever leaves the bench in any way has finished typing.
  useEffect(
    () => () => {
      const text = store.getState().fitting.drafts[whose][name];
      if (text !== undefined) store.dispatch({ does: "measure", whose, name, text });
    },
    [store, whose, name],
  );

  const field = lengthFieldState({
    entry: fitting[whose][name],
    draft: drafts[whose][name],
    unit,
    step,
    onDraft: (text) => dispatch({ does: "draft", of: whose, key: name, text }),
    onCommit: (text) => dispatch({ does: "measure", whose, name, text }),
  });
  return { field, input };
}

/**
 * Whoever has just typed a reading that cannot be stays with it, once, and sees what is the matter; the next press goes
 * on all the same.
 */
function useStaysAtSlip(whose: "body" | "form", name: MeasurementName): () => boolean {
  const store = useStoreItself();
  const looked = useRef(store.getState().fitting[whose][name]);
  return () => {
    const { fitting } = store.getState();
    const entry = fitting[whose][name];
    const isNew = entry !== looked.current;
    looked.current = entry;
    const { problems } = derivationOf(store)(fitting);
    return isNew && problems.measurements.some((problem) => problem.names.includes(name) && isSlip(problem, whose));
  };
}

const isSlip = (problem: MeasurementProblem, whose: "body" | "form"): boolean =>
  problem.whose === whose && problem.code !== "missing" && isContradiction(problem);

function Known({ known }: { readonly known: ReturnType<typeof useMeasurement> }) {
  const { write } = useLengths();
  if (known.kind === "guessed")
    return <p className="bench-known">{measuringWords.guessNow(write(known.value), write(known.spread))}</p>;
  if (known.kind === "table") return <p className="bench-known">{measuringWords.tableNow(write(known.value))}</p>;
  return null;
}
