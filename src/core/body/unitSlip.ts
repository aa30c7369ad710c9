import { mm, type Millimetres } from "../units";
import { type LengthRange, measurementFacts } from "./measurementFacts";
import type { Measurements } from "./measurements";
import { type LevelName, levelNames, type MeasurementName } from "./vocabulary";

/**
 * Girths that were read in one unit and typed as the other. Such a girth is not usual as typed and usual once multiplied
 * or divided by 2.54; and either all of them are so, or it stands nearer to the other girths that way and could not
 * belong with them as typed.
 */
export interface UnitSlip {
  readonly code: "inchesAsCentimetres" | "centimetresAsInches";
  readonly names: readonly MeasurementName[];
  /** The first of them as typed (mm), and what is usual there. */
  readonly got: Millimetres;
  readonly expected: LengthRange;
}

interface Girth {
  readonly level: LevelName;
  readonly name: MeasurementName;
  readonly length: number;
}

export function inUnitSlip(measurements: Measurements): readonly UnitSlip[] {
  const girths = levelNames.flatMap((level): readonly Girth[] => {
    const length = measurements[`${level}Girth`];
    return length === undefined ? [] : [{ level, name: `${level}Girth`, length }];
  });
  return directions.flatMap(({ code, factor }): readonly UnitSlip[] => {
    const slipped = girths.filter(({ name, length }) => isUsual(name, length * factor) && !isUsual(name, length));
    const others = girths.filter((girth) => !slipped.includes(girth));
    const [first] = slipped;
    const isSlip =
      others.length === 0 ? slipped.length > 1 : slipped.every((girth) => standsApart(girth, factor, others));
    if (!first || !isSlip) return [];
    const names = slipped.map(({ name }) => name);
    return [{ code, names, got: mm(first.length), expected: measurementFacts[first.name].usual }];
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

/**
 * Held against the others by what each usually is to the bust (size tables and surveys agree within a tenth): beyond 1.7
 * times one of them it could not belong with it, even the waist of an hourglass; and the other unit brings it nearer.
 */
function standsApart({ level, length }: Girth, factor: number, others: readonly Girth[]): boolean {
  const like = (girth: Girth): number => girth.length / usualShape[girth.level];
  const apart = (own: number): readonly number[] =>
    others.map((other) => Math.abs(Math.log(own / usualShape[level] / like(other))));
  const sum = (parts: readonly number[]): number => parts.reduce((total, part) => total + part, 0);
  return Math.max(...apart(length)) > Math.log(1.7) && sum(apart(length * factor)) < sum(apart(length));
}

const usualShape: { readonly [level in LevelName]: number } = {
  bust: 1,
  underbust: 0.85,
  waist: 0.85,
  highHip: 0.97,
  fullHip: 1.06,
};
