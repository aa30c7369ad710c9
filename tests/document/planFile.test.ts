import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { measured } from "../../src/core/body/reading";
import { levelNames } from "../../src/core/body/vocabulary";
import type { Plan, PlannedPiece } from "../../src/core/plan/plan";
import { planFitting } from "../../src/core/plan/planFitting";
import { mm, ratio } from "../../src/core/units";
import { readFittingText } from "../../src/document/readFitting";
import { fittingMeasurements } from "../../src/document/fittingMeasurements";
import { pieceFromFile, pieceToFile } from "../../src/document/pieceFile";
import { type PlanOrigin, type PlanWords, planFile, planFileSchema } from "../../src/document/planFile";
import { publishedSchemas } from "../../src/command/publishedSchemas";

const published = (file: string) => readFileSync(resolve(import.meta.dirname, "../../public", file), "utf8");
const demo = (name: string) => readFileSync(resolve(import.meta.dirname, "../../shared/demo", `${name}.json`), "utf8");

const words: PlanWords = {
  pieceName: ({ zone, number }) => `${zone} ${number}`,
  piecePlace: (piece) => `place of ${piece.id}`,
  draft: () => "a draft",
  formMatter: ({ what, level }) => `${what} at ${level}`,
  shortfallAdvice: ({ what, level }) => `advice on ${what} at ${level}`,
  seamShift: ({ level }) => `seam at ${level}`,
};
const origin: PlanOrigin = {
  unit: "cm",
  table: null,
  tableSource: undefined,
  size: null,
  measured: {},
  ranking: [],
  pleaseCheck: [],
};

function planOfDemo(name: string): Plan {
  const fitting = readFittingText(demo(name));
  if (!fitting.ok) throw new Error("demo");
  const lengths = fittingMeasurements(fitting.value);
  if (!lengths.ok || lengths.value.form.kind !== "known") throw new Error("demo");
  const { body, form, batting } = lengths.value;
  return planFitting({ body, form: form.measurements, batting });
}

const plan = planOfDemo("first");
const file = planFile(plan, words, origin);

describe("the plan file", () => {
  test("keeps to its own schema", () => {
    expect(planFileSchema.parse(file)).toEqual(file);
  });

  test("has the five levels in order, from the top down, at the body's heights", () => {
    expect(file.levels.map(({ name }) => name)).toEqual([...levelNames]);
    for (const [i, { depthBelowNapeMm }] of file.levels.entries())
      expect(depthBelowNapeMm).toBeCloseTo(plan.levels[i]?.depthBelowNape.value ?? 0, 0);
    expect([...file.levels].sort((one, other) => one.depthBelowNapeMm - other.depthBelowNapeMm)).toEqual(file.levels);
  });

  test("says everything the plan says, to a tenth of a millimetre", () => {
    expect(file.pieces.length).toBeGreaterThan(3);
    for (const [i, written] of file.pieces.entries()) {
      const piece = plan.pieces[i] as PlannedPiece;
      expect(written.layers).toHaveLength(piece.layers.length);
      for (const [k, layer] of written.layers.entries()) {
        const meant = piece.layers[k];
        expect(layer.wrap).toBe(meant?.wrap);
        for (const [j, row] of layer.rows.entries()) {
          expect(row.depthBelowNapeMm).toBeCloseTo(meant?.rows[j]?.depthBelowNape ?? 0, 0);
          expect(Math.abs(row.startMm - (meant?.rows[j]?.start ?? 0))).toBeLessThanOrEqual(0.0501);
          expect(Math.abs(row.endMm - (meant?.rows[j]?.end ?? 0))).toBeLessThanOrEqual(0.0501);
        }
      }
      expect(written.cut.map(({ shape }) => shape)).toEqual(piece.cut.map(({ shape }) => shape));
      for (const level of levelNames) {
        const [read, meant] = [written.readingsAfter[level], piece.readingsAfter[level]];
        expect(Math.abs(read.girthMm - meant.girth)).toBeLessThanOrEqual(0.0501);
        expect(Math.abs(read.frontArcMm - meant.frontArc)).toBeLessThanOrEqual(0.0501);
        expect(Math.abs(read.backArcMm - meant.backArc)).toBeLessThanOrEqual(0.0501);
      }
    }
  });

  test("a piece read back from the file is the piece", () => {
    for (const [i, written] of file.pieces.entries()) {
      const { readingsAfter: _readings, ...piece } = plan.pieces[i] as PlannedPiece;
      const back = pieceFromFile(written);
      expect(Object.keys(back).sort()).toEqual(
        Object.keys(piece)
          .filter((key) => key in back)
          .sort(),
      );
      const { layers, cut, ...names } = back;
      const { layers: meantLayers, cut: meantCut, ...meantNames } = piece;
      expect(names).toEqual(meantNames);
      expect(layers.map(({ rows }) => rows.length)).toEqual(meantLayers.map(({ rows }) => rows.length));
      expect(cut.map(({ shape }) => shape)).toEqual(meantCut.map(({ shape }) => shape));
      expect(pieceToFile({ ...back, readingsAfter: _readings }, written.name, written.place)).toEqual(written);
    }
  });

  test("pieces come in the order of pinning and carry that number", () => {
    expect(file.pieces.map(({ order }) => order)).toEqual(file.pieces.map((_, i) => i + 1));
    for (const { name, zone, number } of file.pieces) expect(name).toBe(`${zone} ${number}`);
    expect(new Set(file.pieces.map(({ id }) => id)).size).toBe(file.pieces.length);
  });

  test("estimates are marked, with their spread, on both sides", () => {
    const [bust, underbust] = file.levels;
    expect(bust?.body.source).toEqual({ girthMm: "measured", frontArcMm: "measured", backArcMm: "measured" });
    expect(underbust?.body.source.frontArcMm).toBe("estimated");
    expect(underbust?.body.spreadMm.frontArcMm).toBeGreaterThan(0);
    expect(underbust?.body.spreadMm.girthMm).toBeUndefined();
  });

  test("what a table says of a form is not a reading; what was read off it is", () => {
    const read = { girth: measured(mm(900)), frontArc: measured(mm(480)), backArc: measured(mm(420)) };
    const asRead = { ...plan, levels: plan.levels.map((level) => ({ ...level, form: read })) };
    const fromTable = planFile(asRead, words, {
      ...origin,
      table: "misses",
      size: "14",
      measured: { bustGirth: mm(914) },
    });
    expect(fromTable.levels[0]?.form.source.girthMm).toBe("measured");
    expect(fromTable.levels[2]?.form.source.girthMm).toBe("estimated");
    expect(fromTable.levels[2]?.body.source.girthMm).toBe("measured");
    expect(planFile(asRead, words, origin).levels[2]?.form.source.girthMm).toBe("measured");
    expect(fromTable.form).toMatchObject({ table: "misses", size: "14", measured: ["bustGirth"] });
  });

  test("an uneven form section says both halves; an even one says the one", () => {
    const uneven = {
      ...plan,
      levels: plan.levels.map((level) => ({
        ...level,
        formSection: {
          leftBreadth: mm(120),
          rightBreadth: mm(130),
          frontDepth: mm(100),
          backDepth: mm(90),
          frontExponent: ratio(2.5),
          backExponent: ratio(level.name === "bust" ? 2.5 : 2.2),
        },
      })),
    };
    expect(planFile(uneven, words, origin).levels[0]?.form).toMatchObject({
      halfBreadthMm: 125,
      leftHalfBreadthMm: 120,
      rightHalfBreadthMm: 130,
      exponent: 2.5,
    });
    expect(planFile(uneven, words, origin).levels[1]?.form).toMatchObject({ frontExponent: 2.5, backExponent: 2.2 });
    expect(file.levels[0]?.form).not.toHaveProperty("leftHalfBreadthMm");
  });

  test("shortfalls and seam shifts keep their sense and their words", () => {
    const short: Plan = {
      ...plan,
      shortfalls: [
        { what: "girth", level: "bust", amount: mm(12.34), sense: "tooLarge" },
        { what: "length", level: "bust", amount: mm(7), sense: "staysShort", length: "shoulderLength" },
      ],
      seamShifts: [
        { level: "waist", perSide: mm(6.04), towards: "back" },
        { level: "fullHip", perSide: mm(3), towards: "front" },
      ],
    };
    const written = planFile(short, words, origin);
    expect(written.shortfalls).toEqual([
      { level: "bust", what: "girth", amountMm: 12.3, sense: "tooLarge", advice: "advice on girth at bust" },
      {
        level: "bust",
        what: "length",
        amountMm: 7,
        sense: "staysShort",
        length: "shoulderLength",
        advice: "advice on length at bust",
      },
    ]);
    // Towards the back the front arc grows, by the shift of both sides.
    expect(written.seamShifts).toEqual([
      { level: "waist", perSideMm: 6, towards: "back", frontArcChangeMm: 12, say: "seam at waist" },
      { level: "fullHip", perSideMm: 3, towards: "front", frontArcChangeMm: -6, say: "seam at fullHip" },
    ]);
  });
});

describe("the published schemas", () => {
  test.each(Object.keys(publishedSchemas))(
    "public/%s is what the schema in the code says (npm run schema writes it)",
    (name) => {
      expect(published(name)).toBe(publishedSchemas[name]);
    },
  );

  test.each(["first", "long-back", "three-girths", "two-sides"])(
    "the demo %s keeps to the published schema",
    (name) => {
      const schema = z.fromJSONSchema(JSON.parse(published("fitting.schema.json")));
      expect(schema.safeParse(JSON.parse(demo(name))).error).toBeUndefined();
      expect(schema.safeParse({ ...JSON.parse(demo(name)), body: { waist: 1 } }).success).toBe(false);
    },
  );

  test("a plan file keeps to the published schema", () => {
    const schema = z.fromJSONSchema(JSON.parse(published("plan.schema.json")));
    expect(schema.safeParse(JSON.parse(JSON.stringify(file))).error).toBeUndefined();
    expect(schema.safeParse({ ...file, pieces: [{}] }).success).toBe(false);
  });
});
