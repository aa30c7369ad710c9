import { describe, expect, test } from "vitest";
import published from "../../shared/size-tables.json";
import type { FormTable } from "../../src/core/form/formTable";
import { formTables } from "../../src/document/formTables";

/**
 * The size tables as the tool holds them (mm) against single figures and the structure of the published tables, in inches.
 * Numbers in brackets are the check values of our table of trade facts. Misses, petite and women's: "Women's and Men's Pattern
 * Sizing", a sewing teacher's page, 2011; d5585-11: ASTM D5585-11e1, table 1, the part on the standards body's public page.
 */
const inch = 25.4;
const table = (id: string): FormTable => {
  const found = formTables.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no size table ${id}`);
  return found;
};
const inches = (
  id: string,
  size: string,
  name: "bustGirth" | "underbustGirth" | "waistGirth" | "fullHipGirth" | "napeToWaist",
): number => {
  const value = table(id).sizes.find((one) => one.name === size)?.measurements[name];
  if (value === undefined) throw new Error(`no ${name} in size ${size} of ${id}`);
  return value / inch;
};
const sizesOf = (id: string) => table(id).sizes.map((size) => size.name);

describe("single figures", () => {
  test("misses 12: 34 / 26.5 / 36 (6); misses 16: 38 / 30 / 40 (7)", () => {
    expect(inches("misses", "12", "bustGirth")).toBeCloseTo(34, 9);
    expect(inches("misses", "12", "waistGirth")).toBeCloseTo(26.5, 9);
    expect(inches("misses", "12", "fullHipGirth")).toBeCloseTo(36, 9);
    expect(inches("misses", "16", "bustGirth")).toBeCloseTo(38, 9);
    expect(inches("misses", "16", "waistGirth")).toBeCloseTo(30, 9);
    expect(inches("misses", "16", "fullHipGirth")).toBeCloseTo(40, 9);
  });

  test("misses back waist in size 6, 12 and 20: 15.5, 16.25, 17.25 (9)", () => {
    expect(["6", "12", "20"].map((size) => inches("misses", size, "napeToWaist"))).toEqual([15.5, 16.25, 17.25]);
  });

  test("d5585-11 size 8: bust 36.25, underbust 30 (11); size 16: 42.125, 35.75 (12); size 10 waist 29 and 30.5 (13)", () => {
    for (const id of ["d5585-11-curvy", "d5585-11-straight"]) {
      expect(inches(id, "8", "bustGirth")).toBeCloseTo(36.25, 9);
      expect(inches(id, "8", "underbustGirth")).toBeCloseTo(30, 9);
      expect(inches(id, "16", "bustGirth")).toBeCloseTo(42.125, 9);
      expect(inches(id, "16", "underbustGirth")).toBeCloseTo(35.75, 9);
    }
    expect(inches("d5585-11-curvy", "10", "waistGirth")).toBeCloseTo(29, 9);
    expect(inches("d5585-11-straight", "10", "waistGirth")).toBeCloseTo(30.5, 9);
  });
});

describe("structure", () => {
  test("misses: hip less bust is 2 in every size (8)", () => {
    for (const size of sizesOf("misses"))
      expect(inches("misses", size, "fullHipGirth") - inches("misses", size, "bustGirth")).toBeCloseTo(2, 9);
  });

  test("petite back waist is 1 in shorter than misses in sizes 6 to 16 (10)", () => {
    const both = sizesOf("petite");
    expect(both).toEqual(["6", "8", "10", "12", "14", "16"]);
    for (const size of both)
      expect(inches("petite", size, "napeToWaist") - inches("misses", size, "napeToWaist")).toBeCloseTo(-1, 9);
  });

  test("d5585-11: straight less curvy waist is 1.5 in in every size (14)", () => {
    const sizes = sizesOf("d5585-11-curvy");
    expect(sizes).toHaveLength(12);
    for (const size of sizes)
      expect(
        inches("d5585-11-straight", size, "waistGirth") - inches("d5585-11-curvy", size, "waistGirth"),
      ).toBeCloseTo(1.5, 9);
  });

  test("d5585-11: bust less underbust is 15.9 cm in sizes 6 to 12 (15)", () => {
    for (const size of ["6", "8", "10", "12"]) {
      expect(
        (inches("d5585-11-curvy", size, "bustGirth") - inches("d5585-11-curvy", size, "underbustGirth")) * 2.54,
      ).toBeCloseTo(15.9, 1);
    }
  });

  test("every table rises with its sizes, says its source, and is the published one", () => {
    for (const { sizes, source } of formTables) {
      expect(source.title.length).toBeGreaterThan(0);
      for (const name of ["bustGirth", "waistGirth", "fullHipGirth", "napeToWaist"] as const) {
        const values = sizes.flatMap((size) => size.measurements[name] ?? []);
        expect([...values].sort((p, q) => p - q)).toEqual(values);
      }
    }
    expect(formTables.length).toBe(published.tables.length + 1);
  });
});
