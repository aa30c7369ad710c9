import { z } from "./strictZod";
import published from "../../shared/size-tables.json";
import type { Measurements } from "../core/body/measurements";
import type { MeasurementName } from "../core/body/vocabulary";
import { chartKinds, type FormTable } from "../core/form/formTable";
import { lengthFromNumber, lengthUnits } from "../core/lengthText";
import { assert } from "../core/result";

/**
 * The published size tables as form tables in millimetres. A table that prints two waists, for a curvy and a straight
 * figure, is two tables here. The neck of a table is the root of the neck, as ours is.
 */
const columnNames = {
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

const columnSchema = z.exactOptional(z.array(z.number()));
const publishedTableSchema = z.strictObject({
  id: z.string(),
  title: z.string(),
  source: z.strictObject({ kind: z.enum(chartKinds), title: z.string(), year: z.int() }),
  unit: z.enum(lengthUnits),
  sizes: z.array(z.string()),
  ...(Object.fromEntries(columns.map((column) => [column, columnSchema])) as {
    readonly [column in ColumnName]: typeof columnSchema;
  }),
});
type PublishedTable = z.infer<typeof publishedTableSchema>;

const figures = [
  { key: "waistCurvy", other: "waistStraight", suffix: "curvy" },
  { key: "waistStraight", other: "waistCurvy", suffix: "straight" },
] as const;

export const formTables: readonly FormTable[] = z
  .array(publishedTableSchema)
  .parse(published.tables)
  .flatMap((table) =>
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
