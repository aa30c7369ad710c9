import { startTransition, useEffect, useState } from "react";
import { answering, type Answering } from "../../app/answers/answering";
import type { SlowAnswer, SlowQuestion } from "../../app/answers/slowQuestion";
import { whenHandRests } from "./handRests";
import { useDerived } from "./useDerived";
import { useFitting } from "./useStore";

/** An answer that takes a while: until it is there the last one stands, marked as no longer the last word. */
export interface Answer<Question extends SlowQuestion> {
  readonly answer: SlowAnswer<Question> | null;
  readonly isWorking: boolean;
}

interface Told<Question extends SlowQuestion> {
  readonly ask: () => unknown;
  readonly answer: SlowAnswer<Question>;
}

export function useAnswer<Question extends SlowQuestion>(question: Question): Answer<Question> {
  const derived = useDerived();
  const fitting = useFitting();
  const ask = derived[question];
  const [told, setTold] = useState<Told<Question> | null>(null);
  useEffect(() => {
    let callOff: () => void = () => {};
    let isStale = false;
    void answers.ask(question, derived, fitting).then((answer) => {
      const ask = derived[question];
      const show = () => startTransition(() => setTold((last) => (last?.ask === ask ? last : { ask, answer })));
      // Shown between letters, not before them.
      if (!isStale) callOff = whenHandRests(show);
    });
    return () => {
      isStale = true;
      callOff();
    };
  }, [question, derived, fitting]);
  return { answer: told?.answer ?? null, isWorking: told?.ask !== ask };
}

const answers: Answering = answering(() =>
  typeof Worker === "undefined"
    ? null
    : new Worker(new URL("../../app/answers/answerWorker.ts", import.meta.url), { type: "module" }),
);
