import { type Fitting, isLogFull, newestVersion, writeFitting } from "../../document/fitting";
import { mostAtOnce } from "../../document/fittingLimits";
import { brokenJsonLimit } from "../../document/jsonLimits";
import { readFitting } from "../../document/readFitting";
import type { FittingProblem } from "../../document/fittingProblem";
import { readKeptFitting } from "../../document/keptFitting";

/** The text under which a fitting is kept. Two fittings that say the same give the same text. */
export function fittingText(fitting: Fitting): string {
  const known = texts.get(fitting);
  if (known !== undefined) return known;
  const { work, ...rest } = writeFitting(fitting);
  const values = Object.entries(rest).map(([key, value]) => [key, partText(value)] as const);
  const parts = work === undefined ? values : [...values, ["work", workText(fitting.work)] as const];
  const sorted = Object.entries(Object.fromEntries([...parts].sort(byKey)) as { readonly [key: string]: unknown });
  const text = `{${sorted.flatMap(([key, part]) => (part === undefined ? [] : `${JSON.stringify(key)}:${part}`)).join()}}`;
  texts.set(fitting, text);
  return text;
}

const texts = new WeakMap<Fitting, string>();

const workText = (work: Fitting["work"]): string => `[${work.map(partText).join()}]`;

/** No part of a fitting ever changes, so each is written once: a letter of a draft writes nothing else anew. */
function partText(part: unknown): string {
  if (typeof part !== "object" || part === null) return sortedText(part);
  const text = partTexts.get(part) ?? sortedText(part);
  partTexts.set(part, text);
  return text;
}

const partTexts = new WeakMap<object, string>();

const byKey = ([one]: readonly [string, unknown], [other]: readonly [string, unknown]): number =>
  one < other ? -1 : 1;

/** A JSON value on one line with its keys in alphabetical order, however deep. Check its limits first. */
export const sortedText = (value: unknown): string => JSON.stringify(value, sortedKeys);

const sortedKeys = (_key: string, value: unknown): unknown =>
  typeof value === "object" && value !== null && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(byKey))
    : value;

/**
 * Whether a fitting can be read back from its own text, word for word; what cannot be is never written. Reading looks at
 * every part for itself, so entries of the log that were read back with the change before are not read once more: that
 * would take longer with every piece, and a key that is pressed meanwhile would wait for it.
 */
export function isReadBack(fitting: Fitting): boolean {
  const rest = withoutProven(fitting);
  const isWhole = rest === null ? isItselfReadBack(fitting) : isItselfReadBack(rest) && isWithinLimits(fitting);
  if (isWhole) proven = { unit: fitting.unit, work: fitting.work };
  return isWhole;
}

function isItselfReadBack(fitting: Fitting): boolean {
  const text = fittingText(fitting);
  const read = readText(text);
  return read.kind === "read" && fittingText(read.fitting) === text;
}

/** The log that was read back last, and the unit its bare numbers had. */
let proven: Pick<Fitting, "unit" | "work"> | null = null;

/** The fitting without the entries of its log that were read back before; null where it is not that log, or only more of it. */
function withoutProven(fitting: Fitting): Fitting | null {
  const { unit, work } = fitting;
  if (proven === null || proven.unit !== unit || isLogFull(work)) return null;
  const before = proven.work;
  if (before.length === 0 || before.length > work.length || pinnedIn(work) > mostAtOnce) return null;
  return before === work || before.every((entry, i) => entry === work[i])
    ? { ...fitting, work: work.slice(before.length) }
    : null;
}

/** Fewer than may be on the form at once, however many were taken off again. */
const pinnedIn = (work: Fitting["work"]): number => work.filter(({ did }) => did === "pinned").length;

const isWithinLimits = (fitting: Fitting): boolean => brokenJsonLimit(fittingText(fitting)) === null;

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
