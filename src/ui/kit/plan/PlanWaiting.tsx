import { isNought } from "../../../text/shownLength";
import { useMemo } from "react";
import { isBare } from "../../../app/progress/isBare";
import { openQuestions, type Question } from "../../../app/progress/questions";
import type { Plan } from "../../../core/plan/plan";
import { linesWords } from "../../../text/linesAtForm";
import { measurementInSentence } from "../../../text/measurements";
import { planningWords } from "../../../text/planning";
import { questionsWords } from "../../../text/questions";
import { homeWords } from "../../../text/workroom";
import { BattingLine } from "../batting/BattingLine";
import { firstContradiction, FirstProblem } from "../measure/MeasureProblems";
import { pageAddress } from "../page";
import { useOpenDemo } from "../shelf/useDemo";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";
import "./draftNote.css";
import { writtenLength } from "../../../text/writtenLength";

/** No plan yet: what is missing, and where to go for it. */
export function PlanWaiting() {
  const { problems } = useDerived();
  const openDemo = useOpenDemo();
  const missing = problems.measurements.filter(({ code }) => code === "missing");
  const ofBody = missing.filter(({ whose }) => whose === "body").flatMap(({ names }) => names);
  const ofForm = missing.some(({ whose }) => whose === "form");
  const wrong = firstContradiction(problems.measurements, "body") ?? firstContradiction(problems.measurements, "form");
  return (
    <div className="place-head stack">
      <h1>{planningWords.waitingTitle}</h1>
      {ofBody.length > 0 ? (
        <>
          <p className="lead">{planningWords.waitingFor(ofBody.map((name) => measurementInSentence(name)))}</p>
          <a className="patch patch-main" href={pageAddress("body")}>
            {planningWords.measureThem}
          </a>
        </>
      ) : null}
      {ofForm ? (
        <>
          <p className="lead">{planningWords.waitingForm}</p>
          <a className="patch" href={pageAddress("form")}>
            {planningWords.describeForm}
          </a>
        </>
      ) : null}
      {wrong === undefined ? null : (
        <>
          <p className="lead">{planningWords.contradiction}</p>
          <FirstProblem problem={wrong} />
          <a className="patch" href={pageAddress(wrong.whose, wrong.names[0])}>
            {planningWords.measureThem}
          </a>
        </>
      )}
      {problems.batting.length > 0 ? (
        <>
          <p className="lead">{planningWords.noBatting}</p>
          <BattingLine plan={null} />
        </>
      ) : null}
      <button type="button" className="patch patch-plain" onClick={openDemo}>
        {homeWords.demo}
      </button>
    </div>
  );
}

/** What the address names to reach the work on the bare form. */
export const linesThing = "lines";

/**
 * Until the bare form was measured on the person's lines the plan is a draft: what it may miss by, and the way to the lines;
 * once a piece lies on the form, how the work makes up for it.
 */
export function DraftNote({ plan }: { readonly plan: Plan }) {
  const { write } = useLengths();
  const { work } = useFitting();
  if (plan.basis !== "draft") return null;
  const { note, makesFirm, begun, back } = linesWords.draft;
  const isOpen = isBare(work);
  return (
    <section className="draft-note">
      <p>
        <strong>{note(write(plan.mayMiss))}</strong> {isOpen ? makesFirm : begun}
      </p>
      {isOpen ? (
        <a className="patch patch-main" href={pageAddress("padding", linesThing)}>
          {back}
        </a>
      ) : null}
    </section>
  );
}

/** What can still be measured, the one that brings most first, each with what it brings and the way there. */
export function NextQuestions({ plan }: { readonly plan: Plan }) {
  const { step, write } = useLengths();
  const questions = useOpenQuestions(plan);
  const told = questions.filter(({ gain }) => !isNought(writtenLength(gain, step))).slice(0, mostAsked);
  if (told.length === 0) return null;
  return (
    <section className="next-questions">
      <h2 className="next-questions-title">{questionsWords.title}</h2>
      <ol className="plain-list numbered">
        {told.map(({ id, gain, first }) => (
          <li key={id}>
            <a href={addressOf(first)}>{questionsWords.names[id]}</a>: {questionsWords.closer(write(gain))}
          </li>
        ))}
      </ol>
    </section>
  );
}

/** Fewer questions, not more: whoever has answered these is asked for the next. */
const mostAsked = 3;

const addressOf = (first: Question["first"]): string =>
  first === null ? pageAddress("padding", linesThing) : pageAddress(first.whose, first.name);

function useOpenQuestions(plan: Plan): readonly Question[] {
  const { lengths } = useDerived();
  const fitting = useFitting();
  return useMemo(
    () => (lengths === null ? [] : openQuestions(plan, { body: lengths.body, form: lengths.form.measured }, fitting)),
    [plan, lengths, fitting],
  );
}
