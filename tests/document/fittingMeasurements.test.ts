import { describe, expect, test } from "vitest";
import type { Fitting } from "../../src/document/fitting";
import { readFitting } from "../../src/document/readFitting";
import { fittingMeasurements } from "../../src/document/fittingMeasurements";

const fitting = (change: object): Fitting => {
  const read = readFitting({
    version: 1,
    unit: "in",
    body: { bustGirth: "35 1/2", waistGirth: 30, fullHipGirth: "98 cm" },
    form: { table: "misses", size: 8 },
    batting: { name: "wadding", layerThickness: "6 mm" },
    ...change,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  return read.value;
};
const lengths = (change: object) => {
  const read = fittingMeasurements(fitting(change));
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  return read.value;
};
const problems = (change: object) => {
  const read = fittingMeasurements(fitting(change));
  return read.ok ? [] : read.problem;
};

describe("lengths in millimetres", () => {
  test("of the body, each in its own unit", () => {
    expect(lengths({}).body).toEqual({ bustGirth: 901.7, waistGirth: 762, fullHipGirth: 980 });
  });

  test("of the battings, with the usual standard deviation where none is given", () => {
    const { batting, finishingBatting } = lengths({
      finishingBatting: { name: "thin", layerThickness: "1/8", spread: 0.3 },
    });
    expect(batting).toEqual({ name: "wadding", layerThickness: 6, relativeDeviation: 0.5 });
    expect(finishingBatting).toEqual({ name: "thin", layerThickness: 3.175, relativeDeviation: 0.3 });
    expect(lengths({}).finishingBatting).toBeNull();
  });

  test("of the reading error: 5 mm unless somebody says otherwise", () => {
    expect(lengths({}).readingError).toBe(5);
    expect(lengths({ readingError: "1/8" }).readingError).toBe(3.175);
  });

  test("drafts play no part", () => {
    const drafts = { body: { waistGirth: "2", apexToApex: "7 and a bit" }, form: {}, other: {} };
    expect(lengths({ drafts })).toEqual(lengths({}));
  });
});

describe("the form", () => {
  // Misses 8: 31 1/2, 24, 33 1/2, back waist 15 3/4 in (shared/size-tables.json, with its source).
  test("from a table and a size", () => {
    expect(lengths({}).form).toEqual({
      kind: "known",
      measurements: { bustGirth: 800.1, waistGirth: 609.6, fullHipGirth: 850.9, napeToWaist: 400.05 },
      measured: {},
      lines: {},
    });
  });

  test("what was typed wins over the table", () => {
    expect(
      lengths({ form: { table: "misses", size: "8", waistGirth: 25, waistFrontArc: "13 1/4" } }).form,
    ).toMatchObject({
      measurements: { bustGirth: 800.1, waistGirth: 635, waistFrontArc: 336.55 },
      measured: { waistGirth: 635, waistFrontArc: 336.55 },
    });
  });

  test("from a tape alone", () => {
    const form = { bustGirth: 32, waistGirth: 24, fullHipGirth: 34 };
    expect(lengths({ form }).form).toMatchObject({
      kind: "known",
      measurements: { bustGirth: 812.8, waistGirth: 609.6 },
    });
  });

  test("a table alone is there to choose from, with what was typed put over every size", () => {
    const { form } = lengths({ form: { table: "misses", napeToWaist: 15 } });
    expect(
      form.kind === "choose" && form.table.sizes.map(({ name, measurements }) => [name, measurements.napeToWaist]),
    ).toEqual(["6", "8", "10", "12", "14", "16", "18", "20"].map((name) => [name, 381]));
  });

  test.each([
    [
      "a table nobody knows",
      { table: "missus", size: "8" },
      { path: ["form", "table"], code: "unknownTable", got: "missus" },
    ],
    [
      "a size the table has not",
      { table: "misses", size: "13" },
      { path: ["form", "size"], code: "unknownSize", got: "13" },
    ],
    ["a size of no table", { size: "8" }, { path: ["form", "size"], code: "sizeWithoutTable", got: "8" }],
    [
      "a table without hips, to choose from",
      { table: "d5585-11-curvy" },
      { path: ["form"], code: "tableLacks", names: ["fullHipGirth"] },
    ],
  ])("%s", (_what, form, problem) => {
    expect(problems({ form })).toEqual([expect.objectContaining(problem)]);
  });

  test("a table without hips serves once they were measured", () => {
    expect(problems({ form: { table: "d5585-11-curvy", fullHipGirth: 37 } })).toEqual([]);
  });

  test("an entry that cannot be read is a problem here too, for a fitting made in memory", () => {
    const made: Fitting = { ...fitting({}), body: { bustGirth: "wide" }, form: { waistGirth: "?" } };
    const read = fittingMeasurements(made);
    expect(!read.ok && read.problem.map(({ path }) => path.join("."))).toEqual(["body.bustGirth", "form.waistGirth"]);
  });
});
