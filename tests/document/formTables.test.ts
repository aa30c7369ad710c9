import { describe, expect, test } from "vitest";
import type { MeasurementName } from "../../src/core/body/vocabulary";
import { firstChart, tableWithReadings } from "../../src/core/form/formTable";
import { mm } from "../../src/core/units";
import published from "../../shared/size-tables.json";
import { chartKinds } from "../../src/core/form/formTable";
import { lengthUnits } from "../../src/core/lengthText";
import { columnNames, formTables } from "../../src/document/formTables";
import { z } from "zod/mini";

const size = (table: string, name: string) => {
  const found = formTables.find(({ id }) => id === table)?.sizes.find((one) => one.name === name);
  if (!found) throw new Error(`${table} ${name}`);
  return found.measurements;
};
const inches = (table: string, name: string, measurement: MeasurementName) =>
  (size(table, name)[measurement] ?? 0) / 25.4;

/**
 * "Women's and Men's Pattern Sizing", a sewing teacher's page, 28 Feb 2011 (a secondary source), and ASTM D5585-11e1,
 * Table 1: rows 6 to 15 of the check values in the trade facts.
 */
describe("published figures", () => {
  test.each([
    ["12", [34, 26.5, 36]],
    ["16", [38, 30, 40]],
  ])("misses %s: bust, waist, hip %j in", (name, expected) => {
    const read = (["bustGirth", "waistGirth", "fullHipGirth"] as const).map((measurement) =>
      inches("misses", name, measurement),
    );
    for (const [i, length] of read.entries()) expect(length).toBeCloseTo(expected[i] ?? 0, 4);
  });

  test("misses hip minus bust is 2 in at every size", () => {
    const sizes = formTables.find(({ id }) => id === "misses")?.sizes ?? [];
    expect(sizes).toHaveLength(8);
    for (const { name } of sizes)
      expect(inches("misses", name, "fullHipGirth") - inches("misses", name, "bustGirth")).toBeCloseTo(2, 4);
  });

  test.each([
    ["6", 15.5],
    ["12", 16.25],
    ["20", 17.25],
  ])("misses %s back waist is %f in", (name, expected) => {
    expect(inches("misses", name, "napeToWaist")).toBeCloseTo(expected, 4);
  });

  test("petite back waist is an inch shorter, sizes 6 to 16", () => {
    for (const name of ["6", "8", "10", "12", "14", "16"]) {
      expect(inches("petite", name, "napeToWaist") - inches("misses", name, "napeToWaist")).toBeCloseTo(-1, 4);
    }
  });

  test.each([
    ["8", 36.25, 30],
    ["16", 42.125, 35.75],
  ])("D5585-11e1 size %s: bust %f, underbust %f in", (name, bust, underbust) => {
    expect(inches("d5585-11-curvy", name, "bustGirth")).toBeCloseTo(bust, 4);
    expect(inches("d5585-11-straight", name, "underbustGirth")).toBeCloseTo(underbust, 4);
  });

  test("D5585-11e1: the curvy and the straight waist are two tables, 1 1/2 in apart at every size", () => {
    expect(inches("d5585-11-curvy", "10", "waistGirth")).toBeCloseTo(29, 4);
    expect(inches("d5585-11-straight", "10", "waistGirth")).toBeCloseTo(30.5, 4);
    const curvy = formTables.find(({ id }) => id === "d5585-11-curvy")?.sizes ?? [];
    expect(curvy).toHaveLength(12);
    for (const { name } of curvy) {
      expect(
        inches("d5585-11-straight", name, "waistGirth") - inches("d5585-11-curvy", name, "waistGirth"),
      ).toBeCloseTo(1.5, 4);
    }
  });

  test("D5585-11e1: bust minus underbust is 15.9 cm, sizes 6 to 12", () => {
    for (const name of ["6", "8", "10", "12"]) {
      const { bustGirth = 0, underbustGirth = 0 } = size("d5585-11-curvy", name);
      expect((bustGirth - underbustGirth) / 10).toBeCloseTo(15.9, 1);
    }
  });
});

describe("tables", () => {
  test("ids are distinct, sizes are distinct, and every table says where it was read", () => {
    const ids = formTables.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { sizes, source, title } of formTables) {
      expect(new Set(sizes.map(({ name }) => name)).size).toBe(sizes.length);
      expect(Math.min(source.title.length, title.length)).toBeGreaterThan(5);
    }
  });

  test("what was read off the form is put over every size and nothing else changes", () => {
    const table = formTables[0];
    if (!table) throw new Error("no table");
    const read = tableWithReadings(table, { waistGirth: mm(700) });
    for (const [i, { measurements }] of read.sizes.entries()) {
      expect(measurements).toEqual({ ...table.sizes[i]?.measurements, waistGirth: 700 });
    }
  });

  test("the chart to begin with is of the best standing that gives every girth and reaches as far as the bust", () => {
    const girths = ["bustGirth", "waistGirth", "fullHipGirth"] as const;
    expect(firstChart(formTables, girths, undefined)?.id).toBe("misses");
    expect(firstChart(formTables, girths, mm(870))?.id).toBe("misses");
    expect(firstChart(formTables, girths, mm(1250))?.id).toBe("womens");
    expect(firstChart(formTables, girths, mm(600))?.id).toBe("misses");
    // Without a hip to ask for, the standard comes before the pages of private sites, in whatever order they lie.
    for (const charts of [formTables, formTables.toReversed()]) {
      expect(firstChart(charts, ["bustGirth", "waistGirth"], mm(870))?.source.kind).toBe("standard");
    }
  });
});

/** Seen to fail with a column under another name. */
test("the file of published charts has the shape that is taken for granted", () => {
  const column = z.exactOptional(z.array(z.number()));
  const table = z.strictObject({
    id: z.string(),
    title: z.string(),
    source: z.strictObject({ kind: z.enum(chartKinds), title: z.string(), year: z.int() }),
    unit: z.enum(lengthUnits),
    sizes: z.array(z.string()),
    ...Object.fromEntries(Object.keys(columnNames).map((name) => [name, column])),
  });
  expect(z.array(table).safeParse(published.tables).error).toBeUndefined();
});
