import { useEffect, useState } from "react";

/**
 * Asks a question whose answer takes a while, after the screen has shown what was just done: until then the answer there
 * was stands, marked as no longer the last word.
 */
export interface Deferred<Answer> {
  readonly answer: Answer | null;
  readonly isWorking: boolean;
}

export function useDeferred<Answer>(ask: () => Answer): Deferred<Answer> {
  const [told, setTold] = useState<{ readonly ask: () => Answer; readonly answer: Answer } | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setTold({ ask, answer: ask() }), nextPaintMs);
    return () => clearTimeout(timer);
  }, [ask]);
  return { answer: told?.answer ?? null, isWorking: told?.ask !== ask };
}

/** Two frames of a slow tablet, so that a press is seen before the planning begins. */
const nextPaintMs = 40;
