/**
 * A function that remembers its last answer: as long as the parts of its input that matter are the same ones, by
 * identity, it gives that very answer back.
 */
export function remembered<Input, Answer>(
  parts: (input: Input) => readonly unknown[],
  work: (input: Input) => Answer,
): (input: Input) => Answer {
  let last: { readonly parts: readonly unknown[]; readonly answer: Answer } | null = null;
  return (input) => {
    const now = parts(input);
    if (last?.parts.length !== now.length || now.some((part, i) => !Object.is(part, last?.parts[i])))
      last = { parts: now, answer: work(input) };
    return last.answer;
  };
}

/** The answer to a question, worked out the first time it is asked. */
export function onceAsked<Answer>(work: () => Answer): () => Answer {
  let told: { readonly answer: Answer } | null = null;
  return () => {
    told ??= { answer: work() };
    return told.answer;
  };
}
