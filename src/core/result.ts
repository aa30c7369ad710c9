/**
 * How a function of the core says that it could not do what was asked. Text that cannot be read and numbers that
 * cannot be a body come back as a `Result` with a problem the typist can act on; a promise that this code itself
 * broke stops the program through `assert`. A wish that cannot be met (the form is already larger there) is neither:
 * it is part of the plan.
 */
export type Result<Value, Problem> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: Problem };

export const ok = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({ ok: true, value });

export const err = <Problem>(problem: Problem): { readonly ok: false; readonly problem: Problem } => ({
  ok: false,
  problem,
});

export function assert(condition: boolean, promise: string): asserts condition {
  if (!condition) throw new Error(`Broken promise in the core: ${promise}`);
}

export function assertNever(value: never): never {
  throw new Error(`Broken promise in the core: unexpected case ${String(value)}`);
}
