import { type Fitting, newestVersion, writeFitting } from "../../document/fitting";
import { readFitting } from "../../document/readFitting";
import type { FittingProblem } from "../../document/fittingProblem";
import { readKeptFitting } from "../../document/keptFitting";

/**
 * The text under which a fitting is kept: its file on one line, keys in alphabetical order, so that two fittings that
 * say the same give the same text, in whatever order they came about.
 */
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

/**
 * What a kept text turned out to be. One written by a newer release is shown as far as this release understands it
 * (or not at all), only to be looked at: writing it back could drop what the newer release added.
 */
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
