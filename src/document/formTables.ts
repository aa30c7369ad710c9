import published from "../../shared/size-tables.json";
import type { Measurements } from "../core/body/measurements";
import type { MeasurementName } from "../core/body/vocabulary";
import type { FormTable } from "../core/form/formTable";
import { lengthFromNumber, type LengthUnit } from "../core/lengthText";
import { assert } from "../core/result";

/**
 * The published size tables as form tables in millimetres. A table that prints two waists, for a curvy and a straight
 * figure, is two tables here. The neck of a table is the root of the neck, as ours is.
 */
export const columnNames = {
  bust: "bustGirth",
  underbust: "underbustGirth",
  waist: "waistGirth",
  waistCurvy: "waistGirth",
  waistStraight: "waistGirth",
  fullHip: "fullHipGirth",
  napeToWaist: "napeToWaist",
  neckBase: "neckGirth",
} as const satisfies { readonly [column: string]: MeasurementName };
type ColumnName = keyof typeof columnNames;
const columns = Object.keys(columnNames) as readonly ColumnName[];

/** A chart as `shared/size-tables.json` has it; a test holds the file against a schema of this shape. */
type PublishedTable = Pick<FormTable, "id" | "title" | "source"> & {
  readonly unit: LengthUnit;
  readonly sizes: readonly string[];
} & { readonly [column in ColumnName]?: readonly number[] };

const figures = [
  { key: "waistCurvy", other: "waistStraight", suffix: "curvy" },
  { key: "waistStraight", other: "waistCurvy", suffix: "straight" },
] as const;

export const formTables: readonly FormTable[] = (published.tables as readonly PublishedTable[]).flatMap((table) =>
  table.waistCurvy && table.waistStraight
    ? figures.map(({ other, suffix }) => {
        const { [other]: _other, ...rest } = table;
        return formTable({ ...rest, id: `${table.id}-${suffix}`, title: `${table.title}, ${suffix} figure` });
      })
    : [formTable(table)],
);

function formTable(table: PublishedTable): FormTable {
  const { id, title, source, unit } = table;
  const measurementsAt = (i: number): Measurements =>
    Object.fromEntries(
      columns.flatMap((column) => {
        const figure = table[column]?.[i];
        if (figure === undefined) return [];
        const length = lengthFromNumber(figure, unit);
        assert(length.ok, `size chart ${id} holds lengths only`);
        return [[columnNames[column], length.value]];
      }),
    );
  return { id, title, source, sizes: table.sizes.map((name, i) => ({ name, measurements: measurementsAt(i) })) };
}
