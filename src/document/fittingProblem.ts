import type { z } from "zod/mini";
import type { MeasurementName } from "../core/body/vocabulary";
import type { LengthProblem } from "../core/lengthText";
import type { JsonLimit } from "./jsonLimits";
import { nearestName } from "./nearestName";

/**
 * Why a file is not a fitting, or a fitting not yet something to plan with: where in the file, a closed code, and what
 * was read and expected. The sentences live with the screens.
 */
export type FittingProblem = { readonly path: FilePath } & (
  | { readonly code: "notJson" }
  | { readonly code: "tooLarge"; readonly what: JsonLimit; readonly most: number }
  | { readonly code: "newerVersion"; readonly got: number; readonly newest: number }
  | { readonly code: "missing"; readonly key: string }
  | { readonly code: "unknownKey"; readonly key: string; readonly nearest: string | null }
  | { readonly code: "wrongKind"; readonly got: string; readonly expected: readonly string[] }
  | { readonly code: "notAllowed"; readonly got: string; readonly expected: readonly string[] }
  | { readonly code: "outOfRange"; readonly got: string; readonly limit: string; readonly side: "atLeast" | "atMost" }
  | { readonly code: "tooFew"; readonly got: number; readonly least: number }
  | { readonly code: "tooMany"; readonly got: number; readonly most: number }
  | { readonly code: "impossiblePiece"; readonly problem: PieceProblem }
  | { readonly code: "piecesAtOnce"; readonly most: number }
  | { readonly code: "unreadableLength"; readonly problem: LengthProblem }
  | { readonly code: "sizeWithoutTable"; readonly got: string }
  | { readonly code: "unknownTable"; readonly got: string; readonly expected: readonly string[] }
  | { readonly code: "unknownSize"; readonly got: string; readonly expected: readonly string[] }
  | { readonly code: "tableLacks"; readonly got: string; readonly names: readonly MeasurementName[] }
);

/** Rows that no piece can have: one not below the row before it, or one that ends before it starts (mm). */
export type PieceProblem =
  | { readonly is: "order"; readonly at: number; readonly above: number }
  | { readonly is: "sides"; readonly start: number; readonly end: number };
export type FilePath = readonly (string | number)[];

/**
 * Turns what the schema found wrong with a file into our own problems; `known` names the keys each object may have. Only
 * the first ones are told which name was meant: a hostile file has a hundred thousand, each held against every name.
 */
export const fittingProblems = (
  error: z.core.$ZodError,
  file: unknown,
  known: (path: FilePath) => readonly string[],
): readonly FittingProblem[] =>
  error.issues.flatMap((issue, i) => issueProblems(issue, file, i < mostNamed ? known : () => []));

const mostNamed = 50;

function issueProblems(
  issue: z.core.$ZodIssue,
  file: unknown,
  known: (path: FilePath) => readonly string[],
): readonly FittingProblem[] {
  const path = issue.path.map((step) => (typeof step === "number" ? step : String(step)));
  const value = valueAt(file, path);
  const last = path.at(-1);
  if (issue.code === "invalid_union") {
    // Of several shapes that an object may have, the nearest is meant: that with the least wrong inside it.
    const shapes = issue.errors.filter((errors) => errors.some(isWithin));
    const nearest = shapes.reduce<(typeof shapes)[number]>(
      (best, errors) => (best.length > 0 && best.length <= errors.length ? best : errors),
      [],
    );
    if (nearest.length > 0)
      return nearest.flatMap((inner) => issueProblems({ ...inner, path: [...issue.path, ...inner.path] }, file, known));
  }
  if (issue.code === "unrecognized_keys") {
    return issue.keys
      .slice(0, mostNamed)
      .map((key) => ({ path, code: "unknownKey", key: shown(key), nearest: nearestName(key, known(path)) }));
  }
  if (value === undefined && last !== undefined)
    return [{ path: path.slice(0, -1), code: "missing", key: String(last) }];
  if (issue.code === "invalid_value")
    return [{ path, code: "notAllowed", got: shown(value), expected: issue.values.map(String) }];
  if (issue.code === "custom")
    return [{ path, code: "impossiblePiece", problem: issue.params?.problem as PieceProblem }];
  if (issue.code === "too_big" && Array.isArray(value))
    return [{ path, code: "tooMany", got: value.length, most: Number(issue.maximum) }];
  if (issue.code === "too_small" && Array.isArray(value))
    return [{ path, code: "tooFew", got: value.length, least: Number(issue.minimum) }];
  if (issue.code === "too_big")
    return [{ path, code: "outOfRange", got: shown(value), limit: String(issue.maximum), side: "atMost" }];
  if (issue.code === "too_small")
    return [{ path, code: "outOfRange", got: shown(value), limit: String(issue.minimum), side: "atLeast" }];
  if (issue.code === "invalid_union" && "options" in issue && Array.isArray(issue.options)) {
    return [{ path, code: "notAllowed", got: shown(value), expected: issue.options.map(String) }];
  }
  return [{ path, code: "wrongKind", got: kindOf(value), expected: expectedKinds(issue) }];
}

const isWithin = ({ path, code }: z.core.$ZodIssue): boolean => path.length > 0 || code === "unrecognized_keys";

const valueAt = (file: unknown, path: FilePath): unknown =>
  path.reduce<unknown>(
    (value, step) =>
      typeof value === "object" && value !== null && Object.hasOwn(value, step) ? Reflect.get(value, step) : undefined,
    file,
  );

const expectedKinds = (issue: z.core.$ZodIssue): readonly string[] => {
  if (issue.code === "invalid_type") return [issue.expected === "int" ? "whole number" : issue.expected];
  if (issue.code === "invalid_union")
    return [...new Set(issue.errors.flatMap((errors) => errors.flatMap(expectedKinds)))];
  return [issue.code];
};

const kindOf = (value: unknown): string =>
  value === null
    ? "null"
    : Array.isArray(value)
      ? "array"
      : typeof value === "number"
        ? `number ${value}`
        : typeof value;

const shown = (value: unknown): string => {
  const text =
    typeof value === "string" ? value : typeof value === "object" && value !== null ? kindOf(value) : String(value);
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
};
