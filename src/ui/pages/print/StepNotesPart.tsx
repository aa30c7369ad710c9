import { useId, useMemo } from "react";
import { paperJob } from "../../../app/classView/sessionPlan";
import { stepFacts } from "../../../app/steps/stepFacts";
import { stepKeys } from "../../../app/steps/stepKeys";
import type { Plan } from "../../../core/plan/plan";
import { longestStepNote } from "../../../document/fittingLimits";
import { stepNoteWords } from "../../../text/stepNotes";
import { stepWords } from "../../../text/steps";
import { useDerived } from "../../kit/useDerived";
import { useDispatch, useFitting, useLengths } from "../../kit/useStore";

interface StepNotesProps {
  readonly plan: Plan;
  /** Whoever comes from the class view to type notes finds the fields open. */
  readonly isOpen?: boolean;
}

/** Where the notes for a class are typed: a field for every step of the job, and for those that the plan has no longer. */
export function StepNotesPart({ plan, isOpen = false }: StepNotesProps) {
  const { stepNotes = {} } = useFitting();
  const rows = useNotedSteps(plan);
  const known = new Set(rows.map(({ key }) => key));
  const gone = Object.keys(stepNotes).filter((key) => !known.has(key));
  return (
    <details className="stitched step-notes unprinted" open={isOpen}>
      <summary>
        <strong>{stepNoteWords.title}</strong>{" "}
        <span className="quiet">{stepNoteWords.count(Object.keys(stepNotes).length)}</span>
      </summary>
      <p>{stepNoteWords.lead}</p>
      <ol>
        {rows.map(({ key, act }) => (
          <NoteField key={key} noteKey={key} act={act} text={stepNotes[key] ?? ""} />
        ))}
      </ol>
      {gone.length === 0 ? null : (
        <>
          <h3>{stepNoteWords.gone}</h3>
          <ol>
            {gone.map((key, i) => (
              <NoteField key={key} noteKey={key} act={stepNoteWords.goneNote(i + 1)} text={stepNotes[key] ?? ""} />
            ))}
          </ol>
        </>
      )}
    </details>
  );
}

/** The steps as they are called by their acts, numbered, so that no two fields are named alike. */
function useNotedSteps(plan: Plan): readonly { readonly key: string; readonly act: string }[] {
  const derived = useDerived();
  const { stepNotes: _notes, ...fitting } = useFitting();
  const { work, form, supplies, arm, unit } = fitting;
  const { step: lengths } = useLengths();
  // biome-ignore lint/correctness/useExhaustiveDependencies: a letter of a note changes no step.
  return useMemo(() => {
    const facts = stepFacts(plan, derived.lengths?.body ?? {}, fitting);
    const steps = paperJob(plan, derived, fitting).steps.flatMap(({ step }) => (step.do === "done" ? [] : [step]));
    const keys = stepKeys(steps);
    return steps.map((step, i) => ({
      key: keys[i] ?? "",
      act: `${i + 1}. ${stepWords(step, { lengths, levels: plan.levels, pieces: plan.pieces, facts })[0]}`,
    }));
  }, [plan, derived.lengths, work, form, supplies, arm, unit, lengths]);
}

function NoteField({ noteKey, act, text }: { readonly noteKey: string; readonly act: string; readonly text: string }) {
  const id = useId();
  const dispatch = useDispatch();
  return (
    <li>
      <label htmlFor={id}>
        <span className="unseen">{stepNoteWords.noteTo("")}</span>
        {act}
      </label>
      <textarea
        id={id}
        rows={1}
        maxLength={longestStepNote}
        value={text}
        onChange={({ target }) => dispatch({ does: "noteStep", key: noteKey, text: target.value })}
      />
    </li>
  );
}
