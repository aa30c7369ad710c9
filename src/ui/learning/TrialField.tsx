import { trialDraftKeys } from "../../app/commands";
import { FractionPad } from "../field/FractionPad";
import { LengthField } from "../field/LengthField";
import { lengthFieldState } from "../field/lengthFieldState";
import { trialWords } from "../text/learning";
import { useDerived } from "../useDerived";
import { touchQuery, useMediaQuery } from "../useMediaQuery";
import { useDispatch, useDrafts, useLengths, useUnit } from "../useStore";

/** The two readings of a trial: each a field of its own, and one pad that writes into the field at hand. */
type Moment = keyof typeof trialDraftKeys;

export function TrialField({ moment, onActive }: { readonly moment: Moment; readonly onActive: () => void }) {
  const drafts = useDrafts();
  const { unit, step, write } = useLengths();
  const { planning } = useDerived();
  const dispatch = useDispatch();
  const isTouch = useMediaQuery(touchQuery);
  const key = trialDraftKeys[moment];
  const state = lengthFieldState({
    entry: undefined,
    draft: drafts.other[key],
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
      onFocus={onActive}
      {...(moment === "before" && bare !== null ? { ghost: trialWords.about(write(bare)) } : {})}
    />
  );
}

export function TrialPad({ moment }: { readonly moment: Moment }) {
  const drafts = useDrafts();
  const unit = useUnit();
  const dispatch = useDispatch();
  const key = trialDraftKeys[moment];
  const text = drafts.other[key] ?? "";
  return (
    <section className="trial-pad" aria-label={trialWords.pad}>
      <p className="reading-pad-into">
        {trialWords.padInto} <strong>{trialWords[moment]}</strong>
      </p>
      <FractionPad
        unit={unit}
        text={text}
        untouched={text === ""}
        onText={(next) => dispatch({ does: "draft", of: "other", key, text: next === "" ? null : next })}
      />
    </section>
  );
}
