import type { SettledFitting } from "../../document/fitting";
import type { Derived } from "../session/derived";
import type { Answered, Asked, SlowAnswer, SlowQuestion } from "./slowQuestion";

/**
 * Answers slow questions without holding up the letters that are typed meanwhile: beside the page in a worker, or, where
 * there is none or it fails, on the page once the screen has shown what was just done.
 */
export interface Answering {
  /** The same derivation is asked once, however many ask. */
  ask<Question extends SlowQuestion>(
    question: Question,
    derived: Derived,
    fitting: SettledFitting,
  ): Promise<SlowAnswer<Question>>;
}

/** As much of a worker as is needed. */
export interface Beside {
  postMessage(asked: Asked): void;
  addEventListener(kind: "message", heard: (event: { readonly data: Answered }) => void): void;
  addEventListener(kind: "error" | "messageerror", heard: (event: Event) => void): void;
  terminate(): void;
}

interface Waiting {
  readonly resolve: (answer: unknown) => void;
  readonly reject: (reason: unknown) => void;
}

export function answering(start: () => Beside | null): Answering {
  let beside: Beside | null | undefined;
  let lastSent: SettledFitting | null = null;
  let count = 0;
  const waiting = new Map<number, Waiting>();
  const known = new WeakMap<() => unknown, Promise<unknown>>();

  const fail = (): void => {
    beside?.terminate();
    beside = null;
    for (const { reject } of waiting.values()) reject(new Error("the worker has failed"));
    waiting.clear();
  };

  const begun = (): Beside | null => {
    if (beside !== undefined) return beside;
    beside = start();
    beside?.addEventListener("message", ({ data }) => {
      waiting.get(data.number)?.resolve(data.answer);
      waiting.delete(data.number);
    });
    beside?.addEventListener("error", (event) => {
      event.preventDefault();
      fail();
    });
    beside?.addEventListener("messageerror", fail);
    return beside;
  };

  const elsewhere = (question: SlowQuestion, fitting: SettledFitting): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const worker = begun();
      if (worker === null) return reject(new Error("there is no worker"));
      count += 1;
      waiting.set(count, { resolve, reject });
      worker.postMessage({ number: count, question, fitting: fitting === lastSent ? null : fitting });
      lastSent = fitting;
    });

  return {
    ask: <Question extends SlowQuestion>(question: Question, derived: Derived, fitting: SettledFitting) => {
      const ask = derived[question];
      const answer = known.get(ask) ?? elsewhere(question, fitting).catch(() => onThePage(ask));
      known.set(ask, answer);
      return answer as Promise<SlowAnswer<Question>>;
    },
  };
}

const onThePage = (ask: () => unknown): Promise<unknown> =>
  new Promise<void>((resolve) => setTimeout(resolve, nextPaintMs)).then(ask);

/** Two frames of a slow tablet, so that a press is seen before the planning begins. */
const nextPaintMs = 40;
