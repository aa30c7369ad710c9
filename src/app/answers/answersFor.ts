import type { SettledFitting } from "../../document/fitting";
import type { Derived } from "../session/derived";
import type { Answered, Asked } from "./slowQuestion";

/** Answers questions about the fitting that came last. Only a first question without a fitting is an error. */
export function answersFor(derive: (fitting: SettledFitting) => Derived): (asked: Asked) => Answered {
  let known: SettledFitting | null = null;
  return ({ number, question, fitting }) => {
    if (fitting !== null) known = known === null ? fitting : withKnownParts(fitting, known);
    if (known === null) throw new Error("a question came before any fitting");
    return { number, answer: derive(known)[question]() };
  };
}

/**
 * The fitting that came, with every part that reads as before being the very same object again: the derivation remembers
 * by identity, and what was sent is always a copy.
 */
function withKnownParts(fitting: SettledFitting, known: SettledFitting): SettledFitting {
  const before = new Map<string, unknown>(Object.entries(known));
  const parts = Object.entries(fitting).map(([name, part]: [string, unknown]) => {
    const old = before.get(name);
    return [name, JSON.stringify(old) === JSON.stringify(part) ? old : part] as const;
  });
  return Object.fromEntries(parts) as unknown as SettledFitting;
}
