import { type Fitting, newestVersion, writeFitting } from "../../document/fitting";
import { readFitting } from "../../document/readFitting";
import type { FittingProblem } from "../../document/fittingProblem";
import { readKeptFitting } from "../../document/keptFitting";

/** The text under which a fitting is kept. Two fittings that say the same give the same text. */
export function fittingText(fitting: Fitting): string {
  const known = texts.get(fitting);
  if (known !== undefined) return known;
  const text = sortedText(writeFitting(fitting));
  texts.set(fitting, text);
  return text;
}

const texts = new WeakMap<Fitting, string>();

/** A JSON value on one line with its keys in alphabetical order, however deep. Check its limits first. */
export const sortedText = (value: unknown): string => JSON.stringify(value, sortedKeys);

const sortedKeys = (_key: string, value: unknown): unknown =>
  typeof value === "object" && value !== null && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1)))
    : value;

/** Whether a fitting can be read back from its own text, word for word; what cannot be is never written. */
export function isReadBack(fitting: Fitting): boolean {
  const text = fittingText(fitting);
  const read = readText(text);
  return read.kind === "read" && fittingText(read.fitting) === text;
}

/** One written by a newer release is only to be looked at, as far as it is understood: writing it could drop something. */
export type TextReading =
  | { readonly kind: "read"; readonly fitting: Fitting }
  | { readonly kind: "newer"; readonly asUnderstood: Fitting | null }
  | { readonly kind: "unreadable"; readonly problems: readonly FittingProblem[] };

export function readText(text: string): TextReading {
  const read = readKeptFitting(text);
  if (read.ok) return { kind: "read", fitting: read.value };
  const isNewer = read.problem.some(({ code }) => code === "newerVersion");
  if (!isNewer) return { kind: "unreadable", problems: read.problem };
  const understood = readFitting({ ...(JSON.parse(text) as object), version: newestVersion });
  return { kind: "newer", asUnderstood: understood.ok ? understood.value : null };
}
