import type { Measurements } from "../body/measurements";
import type { MeasurementName } from "../body/vocabulary";
import type { Millimetres } from "../units";

/** What a size chart is, best standing first: a published standard's figures, a survey's, or a page of a private site. */
export const chartKinds = ["standard", "survey", "privatePage"] as const;
export type ChartKind = (typeof chartKinds)[number];

/** Where the figures of a size chart were read: what it is, its title, and the year it was published in. */
export interface ChartSource {
  readonly kind: ChartKind;
  readonly title: string;
  readonly year: number;
}

/**
 * A published table of body sizes that stock forms may follow, in millimetres, with where it was read. Its figures are
 * a guess about a real form: what a tape reads off the form itself always wins.
 */
export interface FormTable {
  readonly id: string;
  readonly title: string;
  readonly source: ChartSource;
  readonly sizes: readonly FormSize[];
}

/**
 * The chart to begin with: of the best standing among those that give every named measurement in every size and reach
 * as far as this body does at the bust (a chart's last step farther is still its last size); where none reaches so far,
 * the best that gives the measurements. A body nobody measured is reached by every chart.
 */
export function firstChart(
  charts: readonly FormTable[],
  names: readonly MeasurementName[],
  bust: Millimetres | undefined,
): FormTable | undefined {
  const whole = charts
    .filter(({ sizes }) => sizes.every(({ measurements }) => names.every((name) => measurements[name] !== undefined)))
    .toSorted((one, other) => chartKinds.indexOf(one.source.kind) - chartKinds.indexOf(other.source.kind));
  return whole.find((chart) => bust === undefined || reaches(chart, bust)) ?? whole[0];
}

function reaches({ sizes }: FormTable, bust: Millimetres): boolean {
  const busts = sizes.flatMap(({ measurements }) => measurements.bustGirth ?? []);
  const [last = 0, before = last] = busts.toReversed();
  return bust >= (busts[0] ?? 0) && bust <= last + (last - before);
}

export interface FormSize {
  readonly name: string;
  readonly measurements: Measurements;
}

/** The table with what was read off the form itself put over the figures of every size. */
export const tableWithReadings = (table: FormTable, readings: Measurements): FormTable => ({
  ...table,
  sizes: table.sizes.map(({ name, measurements }) => ({ name, measurements: { ...measurements, ...readings } })),
});
