import { describe, expect, test } from "vitest";
import { type Fitting, readFitting } from "../../src/document/fitting";
import { fittingMeasurements } from "../../src/document/fittingMeasurements";

const fitting = (change: object): Fitting => {
  const read = readFitting({
    version: 1,
    unit: "in",
    body: { bustGirth: "38 1/2", waistGirth: 33, fullHipGirth: "105 cm" },
    form: { table: "misses", size: 12 },
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
    expect(lengths({}).body).toEqual({ bustGirth: 977.9, waistGirth: 838.2, fullHipGirth: 1050 });
  });

  test("of the battings, with the usual spread where none is given", () => {
    const { batting, finishingBatting } = lengths({
      finishingBatting: { name: "thin", layerThickness: "1/8", spread: 0.3 },
    });
    expect(batting).toEqual({ name: "wadding", layerThickness: 6, spread: 0.5 });
    expect(finishingBatting).toEqual({ name: "thin", layerThickness: 3.175, spread: 0.3 });
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
  // Misses 12: 34, 26 1/2, 36, back waist 16 1/4 in (size-tables.json, "Women's and Men's Pattern Sizing", 28 Feb 2011).
  test("from a table and a size", () => {
    expect(lengths({}).form).toEqual({
      kind: "known",
      measurements: { bustGirth: 863.6, waistGirth: 673.1, fullHipGirth: 914.4, napeToWaist: 412.75 },
      measured: {},
    });
  });

  test("what was typed wins over the table", () => {
    expect(
      lengths({ form: { table: "misses", size: "12", waistGirth: 27, waistFrontArc: "14 1/4" } }).form,
    ).toMatchObject({
      measurements: { bustGirth: 863.6, waistGirth: 685.8, waistFrontArc: 361.95 },
      measured: { waistGirth: 685.8, waistFrontArc: 361.95 },
    });
  });

  test("from a tape alone", () => {
    const form = { bustGirth: 34, waistGirth: 26, fullHipGirth: 36 };
    expect(lengths({ form }).form).toMatchObject({
      kind: "known",
      measurements: { bustGirth: 863.6, waistGirth: 660.4 },
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
      { table: "missus", size: "12" },
      { path: ["form", "table"], code: "unknownTable", got: "missus" },
    ],
    [
      "a size the table has not",
      { table: "misses", size: "13" },
      { path: ["form", "size"], code: "unknownSize", got: "13" },
    ],
    ["a size of no table", { size: "12" }, { path: ["form", "size"], code: "sizeWithoutTable", got: "12" }],
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
