import type { RefObject } from "react";
import { trialDraftKeys } from "../../app/commands";
import { FractionPad } from "../field/FractionPad";
import { usePadInto } from "../field/usePadInto";
import { LengthField } from "../field/LengthField";
import { lengthFieldState } from "../field/lengthFieldState";
import { trialWords } from "../text/learning";
import { useDerived } from "../useDerived";
import { touchQuery, useMediaQuery } from "../useMediaQuery";
import { useDispatch, useDraft, useLengths, useUnit } from "../useStore";

/** The two readings of a trial: each a field of its own, and one pad that writes into the field at hand. */
type Moment = keyof typeof trialDraftKeys;

export interface TrialFieldProps {
  readonly moment: Moment;
  readonly inputRef: RefObject<HTMLInputElement | null>;
  readonly onActive: () => void;
  readonly onEnter: () => void;
}

export function TrialField({ moment, inputRef, onActive, onEnter }: TrialFieldProps) {
  const key = trialDraftKeys[moment];
  const draft = useDraft("other", key);
  const { unit, step, write } = useLengths();
  const { planning } = useDerived();
  const dispatch = useDispatch();
  const isTouch = useMediaQuery(touchQuery);
  const state = lengthFieldState({
    entry: undefined,
    draft,
    unit,
    step,
    onDraft: (text) => dispatch({ does: "draft", of: "other", key, text: text === "" ? null : text }),
    onCommit: () => {},
  });
  const bare = planning.kind === "planned" ? planning.plan.bareForm.waist.girth : null;
  return (
    <LengthField
      label={trialWords[moment]}
      state={state}
      unit={unit}
      step={step}
      padInstead={isTouch}
      inputRef={inputRef}
      onFocus={onActive}
      onEnter={onEnter}
      {...(moment === "before" && bare !== null ? { ghost: trialWords.about(write(bare)) } : {})}
    />
  );
}

export function TrialPad({ moment }: { readonly moment: Moment }) {
  const unit = useUnit();
  const onKey = usePadInto(trialDraftKeys[moment]);
  return (
    <section className="trial-pad" aria-label={trialWords.pad}>
      <p className="reading-pad-into">
        {trialWords.padInto} <strong>{trialWords[moment]}</strong>
      </p>
      <FractionPad unit={unit} onKey={onKey} />
    </section>
  );
}
