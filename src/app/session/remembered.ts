/**
 * A function that remembers its last answer: as long as the parts of its input that matter are the same ones, by
 * identity, it gives that very answer back.
 */
export function remembered<Input, Answer>(
  parts: (input: Input) => readonly unknown[],
  work: (input: Input) => Answer,
): (input: Input) => Answer {
  let last: { readonly input: Input; readonly parts: readonly unknown[]; readonly answer: Answer } | null = null;
  return (input) => {
    // The same input again, as it comes from every screen that asks, has the same parts.
    if (last !== null && Object.is(last.input, input)) return last.answer;
    const now = parts(input);
    const isSame = last?.parts.length === now.length && now.every((part, i) => Object.is(part, last?.parts[i]));
    last = { input, parts: now, answer: last !== null && isSame ? last.answer : work(input) };
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
