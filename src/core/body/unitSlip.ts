import { mm, type Millimetres } from "../units";
import { type LengthRange, measurementFacts } from "./measurementFacts";
import type { Measurements } from "./measurements";
import { levelNames, type MeasurementName } from "./vocabulary";

/**
 * Girths that were read in one unit and typed as the other. Either every girth is outside what is usual and inside it
 * once multiplied or divided by 2.54, or a single one is, and comes near the others that way.
 */
export interface UnitSlip {
  readonly code: "inchesAsCentimetres" | "centimetresAsInches";
  readonly names: readonly MeasurementName[];
  /** The first of them as typed (mm), and what is usual there. */
  readonly got: Millimetres;
  readonly expected: LengthRange;
}

export function inUnitSlip(measurements: Measurements): readonly UnitSlip[] {
  const girths = levelNames.flatMap((level) => {
    const length = measurements[`${level}Girth`];
    return length === undefined ? [] : [{ name: `${level}Girth` as const, length }];
  });
  return directions.flatMap(({ code, factor }): readonly UnitSlip[] => {
    const slipped = girths.filter(({ name, length }) => isUsual(name, length * factor) && !isUsual(name, length));
    const first = slipped[0];
    if (!first) return [];
    const others = girths.filter((girth) => !slipped.includes(girth));
    const isSlip =
      others.length === 0
        ? slipped.length > 1
        : slipped.every(({ length }) =>
            others.every((other) => alike(length * factor, other.length) && !alike(length, other.length)),
          );
    return isSlip
      ? [
          {
            code,
            names: slipped.map(({ name }) => name),
            got: mm(first.length),
            expected: measurementFacts[first.name].usual,
          },
        ]
      : [];
  });
}

const directions = [
  { code: "inchesAsCentimetres", factor: 2.54 },
  { code: "centimetresAsInches", factor: 1 / 2.54 },
] as const;

const isUsual = (name: MeasurementName, length: number): boolean => {
  const { least, most } = measurementFacts[name].usual;
  return length >= least && length <= most;
};

/** Girths of one torso: neither more than seven tenths over the other. A waist to full hip of 0.59 is rarer than a slip. */
const alike = (one: number, other: number): boolean => Math.max(one, other) < 1.7 * Math.min(one, other);
