import type { Measurements } from "../body/measurements";

/**
 * A published table of body sizes that stock forms may follow, in millimetres, with where it was read. Its figures are
 * a guess about a real form: what a tape reads off the form itself always wins.
 */
export interface FormTable {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly sizes: readonly FormSize[];
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
