import { upperFirst } from "../../../text/upperFirst";
import { type KeyboardEvent, useEffect, useState } from "react";
import { type TypedName, type TypedReading, typedDoubt } from "../../../app/classView/classTyped";
import type { ClassView } from "../../../app/classView/classView";
import { type LengthProblem, fineStep, parseLength, tapeStep } from "../../../core/lengthText";
import { mm } from "../../../core/units";
import { layerOfTrial } from "../../../core/plan/trialGain";
import { typedLabel, typedWords } from "../../../text/classView";
import { levelWords } from "../../../text/pictures";
import { lengthProblemText } from "../../../text/problems";
import { shownLength } from "../../../text/shownLength";
import { writtenLength } from "../../../text/writtenLength";

interface TypedLineProps {
  readonly view: ClassView;
  readonly keep: (name: TypedName, reading: TypedReading | null) => void;
}

/** At every step at which the class reads a tape: where what it reads is typed, and that it stays in the class view. */
export function ClassTypedLine({ view, keep }: TypedLineProps) {
  const { asked, level, step, place, covers } = view;
  const [problem, setProblem] = useState<LengthProblem | null>(null);
  const at = `${String(place)} ${level.name}`;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another step or level has no problem yet.
  useEffect(() => setProblem(null), [at]);
  if (asked.length === 0) return null;
  if (covers.form || covers.person) return <p className="class-typed class-typed-covered">{typedWords.covered}</p>;
  return (
    <form className="class-typed" aria-label={typedWords.title} onSubmit={(event) => event.preventDefault()} key={at}>
      <p className="class-typed-title">
        {typedWords.title} <kbd className="class-key">{typedWords.key}</kbd>
      </p>
      {asked.map((name) => (
        <TypedField key={name} name={name} view={view} keep={keep} onProblem={setProblem} />
      ))}
      <p className="class-typed-said" role="status">
        {problem === null ? saidOf(view) : lengthProblemText(problem, tapeStep[view.unit])}
      </p>
      <span className="unseen">{step.do === "trial" ? "" : upperFirst(levelWords[level.name])}</span>
    </form>
  );
}

/** What follows from what was typed, or what is wrong with it; before anything was typed, that it stays here. */
function saidOf({ typed, level, plan, step, unit }: ClassView): string {
  const doubt = typedDoubt(typed, level.name, step.do === "read-lines" ? null : plan.bareForm[level.name]);
  if (doubt !== null) return typedWords.doubts[doubt];
  const { trialBare, trialWrapped } = typed;
  if (step.do === "trial" && trialBare !== undefined && trialWrapped !== undefined) {
    const layer = layerOfTrial(mm(trialWrapped.length - trialBare.length));
    return typedWords.layer(shownLength(layer, fineStep[unit]));
  }
  return step.do === "read-lines"
    ? typedWords.planCounts(shownLength(plan.bareForm[level.name].girth, tapeStep[unit]))
    : typedWords.kept;
}

interface TypedFieldProps extends TypedLineProps {
  readonly name: TypedName;
  readonly onProblem: (problem: LengthProblem | null) => void;
}

function TypedField({ name, view: { typed, unit }, keep, onProblem }: TypedFieldProps) {
  const kept = typed[name];
  const shown =
    kept === undefined ? "" : kept.unit === unit ? kept.text : writtenLength(kept.length, tapeStep[unit], "bare");
  const [draft, setDraft] = useState<string | null>(null);
  const settle = () => {
    if (draft === null) return;
    const length = draft.trim() === "" ? null : parseLength(draft, unit);
    // What cannot be read stays in its field, so that it can be mended.
    if (length?.ok === false) return onProblem(length.problem);
    setDraft(null);
    onProblem(null);
    keep(name, length === null ? null : { text: draft.trim(), unit, length: length.value });
  };
  const onKey = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === "Escape") {
      setDraft(null);
      event.currentTarget.blur();
    }
    // The clicker turns the page from within a field, too, and takes nothing typed with it.
    if (event.key === "PageDown" || event.key === "PageUp") settle();
    if (event.key === "Enter") {
      settle();
      const fields = [...(event.currentTarget.form?.querySelectorAll("input") ?? [])];
      const next = fields[fields.indexOf(event.currentTarget) + 1];
      if (next === undefined) event.currentTarget.blur();
      else next.focus();
    }
  };
  return (
    <label className="class-typed-field">
      {typedLabel(name)}
      <input
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={draft ?? shown}
        aria-invalid={draft !== null && draft.trim() !== "" && !parseLength(draft, unit).ok}
        onChange={({ target }) => setDraft(target.value)}
        onBlur={settle}
        onKeyDown={onKey}
      />
    </label>
  );
}

/** Where the key to type leads: the first field that is still empty. */
export function focusTyped(): void {
  const fields = [...document.querySelectorAll<HTMLInputElement>(".class-typed input")];
  (fields.find(({ value }) => value === "") ?? fields[0])?.focus();
}
