import type { Result } from "../core/result";
import type { Fitting } from "./fitting";
import { readFitting, readFittingText } from "./readFitting";
import type { FilePath, FittingProblem } from "./fittingProblem";

/** The key under which entries of the log that cannot be are kept in the file, as they were found. */
const setAsideKey = "workSetAside";

/**
 * Reads a fitting that was saved here. What an earlier release took into the log and this one cannot use, such as a piece
 * with no rows, must not lock the rest: those entries are set aside in the fitting itself, whole, and the rest opens.
 * What comes from outside is read by `readFittingText`, which refuses and says why.
 */
export function readKeptFitting(text: string): Result<Fitting, readonly FittingProblem[]> {
  const read = readFittingText(text);
  const wrong = read.ok ? [] : [...new Set(read.problem.map(({ path }) => entryAt(path)))];
  const isOfWork = wrong.length > 0 && wrong.every((entry) => entry !== null);
  const file: unknown = isOfWork ? JSON.parse(text) : null;
  if (read.ok || !isWithWork(file)) return read;
  const rest = readFitting({ ...file, work: file.work.filter((_, at) => !wrong.includes(at)) });
  if (!rest.ok) return read;
  const before = rest.value.extra[setAsideKey];
  const setAside = [
    ...(Array.isArray(before) ? (before as readonly unknown[]) : []),
    ...wrong.map((at) => file.work[at ?? -1]),
  ];
  return { ok: true, value: { ...rest.value, extra: { ...rest.value.extra, [setAsideKey]: setAside } } };
}

/** How many entries of the log were set aside. */
export function setAsideCount({ extra }: Pick<Fitting, "extra">): number {
  const kept = extra[setAsideKey];
  return Array.isArray(kept) ? kept.length : 0;
}

/** Which entry of the log a place in a file lies in. */
const entryAt = ([key, entry]: FilePath): number | null => (key === "work" && typeof entry === "number" ? entry : null);

const isWithWork = (file: unknown): file is { readonly work: readonly unknown[] } =>
  typeof file === "object" && file !== null && "work" in file && Array.isArray(file.work);
