import type { Measurements } from "../../core/body/measurements";
import { checkMeasurements, isContradiction, type MeasurementProblem } from "../../core/body/plausibility";
import { formAsRead, type FormLines } from "../../core/form/formLines";
import { linePartName, linePartReadings } from "../../core/form/linePart";
import type { LengthUnit } from "../../core/lengthText";
import type { Millimetres } from "../../core/units";
import type { LineReadingAsked } from "./linesAtForm";

/** A reading of the bare form on one of the person's lines, before it is saved. */
export interface LineTried extends LineReadingAsked {
  readonly depth: Millimetres;
  readonly length: Millimetres;
}

/** What is the matter with it beside what is known of the form: a contradiction first, then what is only unusual. */
export function lineProblem(
  form: Measurements,
  lines: FormLines,
  { level, part, depth, length }: LineTried,
): MeasurementProblem | null {
  const name = linePartName(level, part);
  const readings = { ...lines[level]?.readings, [linePartReadings[part]]: length };
  const tried = formAsRead(form, { ...lines, [level]: { depthBelowNape: depth, readings } }, null);
  const found = checkMeasurements(tried, "form").filter(
    ({ code, names }) => code !== "missing" && names.includes(name),
  );
  return found.find(isContradiction) ?? found[0] ?? null;
}

/**
 * The unit such a length was taken in, if it looks as if it was typed in the other one: it misses what is expected there by
 * the factor between inches and centimeters.
 */
export function slippedUnit(length: Millimetres, expected: Millimetres, unit: LengthUnit): "cm" | "in" | null {
  const isNear = (factor: number): boolean => Math.abs(length / expected / factor - 1) < slipTolerance;
  if (unit === "in" && isNear(2.54)) return "cm";
  return unit !== "in" && isNear(1 / 2.54) ? "in" : null;
}

/** A form is seldom further than this from what is expected of it, and two units are much further apart. */
const slipTolerance = 0.25;
