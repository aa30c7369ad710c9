import { useId, useRef } from "react";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { fieldWords } from "../../../text/field";
import { measurementTexts } from "../../../text/measurements";
import { measuringWords } from "../../../text/measuring";
import { FractionPad, pressKey } from "../field/FractionPad";
import { LengthField } from "../field/LengthField";
import { pageAddress } from "../page";
import { derivationOf, useDerived } from "../useDerived";
import { touchQuery, useMediaQuery, wideQuery } from "../useScreen";
import { useLengths, useStoreItself, useUnit } from "../useStore";
import { MeasureGuide, MeasureMore } from "./MeasureGuide";
import { isContradicted, MeasureProblems } from "./MeasureProblems";
import { useBenchField, useMeasurement } from "./useMeasurement";

/** The bench: one measurement at hand, how to take it, the field and the pad, and the way to the next. */
interface MeasureBenchProps {
  readonly whose: "body" | "form";
  readonly name: MeasurementName;
  readonly next: MeasurementName | undefined;
  /** Changes each time a person came here on purpose, so that the field takes the caret. */
  readonly focusTurn: number;
  /** Typed with the device's own keyboard, where a finger would use the pad. */
  readonly isByKeyboard: boolean;
  readonly onByKeyboard: (isByKeyboard: boolean) => void;
  readonly onNext: () => void;
  readonly onLeave: () => void;
}

export function MeasureBench(props: MeasureBenchProps) {
  const { whose, name, next, focusTurn, isByKeyboard, onByKeyboard, onNext, onLeave } = props;
  const { label } = measurementTexts[name];
  const unit = useUnit();
  const { field, input } = useBenchField(whose, name, focusTurn);
  const isTouch = useMediaQuery(touchQuery);
  const isWide = useMediaQuery(wideQuery);
  const padInstead = isTouch && !isByKeyboard;
  const known = useMeasurement(whose, name);
  const isEnough = useDerived().planning.kind === "planned" && whose === "body";
  const problemsId = useId();
  const stays = useStaysAtSlip(whose, name);
  const goOn = () => {
    field.commit();
    if (stays()) input.current?.focus();
    else onNext();
  };

  const turnKeyboard = () => {
    onByKeyboard(padInstead);
    input.current?.focus();
  };
  const entry = (
    <>
      <div className="bench-entry">
        <LengthField
          label={label}
          look="large"
          state={field}
          ghost={fieldWords.examples[unit]}
          padInstead={padInstead}
          inputRef={input}
          describedBy={problemsId}
          onEnter={goOn}
          onEscape={onLeave}
        />
        <div className="bench-ways">
          <button type="button" className={isEnough ? "patch" : "patch patch-main bench-next"} onClick={goOn}>
            {next === undefined ? measuringWords.last : measuringWords.next(measurementTexts[next].label)}
          </button>
          {isEnough ? (
            <a className="patch patch-main" href={pageAddress("plan")}>
              {measuringWords.toPlan}
            </a>
          ) : null}
        </div>
      </div>
      <Known known={known} />
      <MeasureProblems whose={whose} name={name} id={problemsId} />
      <FractionPad unit={unit} onKey={(key) => field.type(pressKey(field.text, key, !field.isDraft))} />
      {isTouch ? (
        <button type="button" className="patch patch-plain" onClick={turnKeyboard}>
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

function Known({ known }: { readonly known: ReturnType<typeof useMeasurement> }) {
  const { write } = useLengths();
  if (known.kind === "guessed")
    return <p className="bench-known">{measuringWords.guessNow(write(known.value), write(known.standardDeviation))}</p>;
  if (known.kind === "table") return <p className="bench-known">{measuringWords.tableNow(write(known.value))}</p>;
  return null;
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
    return isNew && isContradicted(problems.measurements, whose, name);
  };
}
