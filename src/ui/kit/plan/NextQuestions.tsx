import { useMemo } from "react";
import { openQuestions, type Question } from "../../../app/progress/questions";
import { formatLength } from "../../../core/lengthText";
import type { Plan } from "../../../core/plan/plan";
import { placeAddress } from "../place";
import { questionsWords } from "../../../text/questions";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";
import { linesThing } from "./DraftNote";

/** What can still be measured, the one that brings most first, each with what it brings and the way there. */
export function NextQuestions({ plan }: { readonly plan: Plan }) {
  const { step, write } = useLengths();
  const questions = useOpenQuestions(plan);
  const told = questions.filter(({ gain }) => !/^0\b/.test(formatLength(gain, step))).slice(0, mostAsked);
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
  first === null ? placeAddress("padding", linesThing) : placeAddress(first.whose, first.name);

function useOpenQuestions(plan: Plan): readonly Question[] {
  const { lengths } = useDerived();
  const fitting = useFitting();
  return useMemo(
    () => (lengths === null ? [] : openQuestions(plan, { body: lengths.body, form: lengths.form.measured }, fitting)),
    [plan, lengths, fitting],
  );
}
