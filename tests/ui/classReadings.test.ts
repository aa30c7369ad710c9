import { describe, expect, test } from "vitest";
import { padProgress } from "../../src/app/progress/padProgress";
import { levelNames } from "../../src/core/body/vocabulary";
import { formatLength } from "../../src/core/lengthText";
import { mm } from "../../src/core/units";
import { pieceToFile } from "../../src/document/pieceFile";
import { madeUpPeople, madeUpPerson } from "../../src/app/classView/classPeople";
import { classReadings } from "../../src/app/classView/classView";
import { classScene } from "../../src/ui/pages/class/classScene";

const { plan, progress } = madeUpPerson(0);
const at = "2026-01-01T00:00:00.000Z";
const pinned = plan.pieces
  .slice(0, 3)
  .map((piece) => ({ did: "pinned", piece: pieceToFile(piece, "piece", "place"), at }) as const);

describe("what the class view says the tape reads", () => {
  test("every made-up person has a plan with pieces", () => {
    for (let i = 0; i < madeUpPeople; i++) expect(madeUpPerson(i).plan.pieces.length).toBeGreaterThan(3);
  });

  test("for a plan nobody has begun, it is the plan's own readings after every piece", () => {
    for (const level of levelNames) {
      expect(classReadings(plan, progress, level, 0)).toEqual(plan.bareForm[level]);
      for (const piece of plan.pieces) {
        const { girth, frontArc, backArc } = classReadings(plan, progress, level, piece.order);
        const after = piece.readingsAfter[level];
        expect(girth).toBeCloseTo(after.girth, 6);
        expect(frontArc).toBeCloseTo(after.frontArc, 6);
        expect(backArc).toBeCloseTo(after.backArc, 6);
      }
    }
  });

  test("what was read off the form counts from there on, and not before", () => {
    const level = "waist";
    const expected = plan.pieces[2]?.readingsAfter[level].girth ?? 0;
    const read = formatLength(mm(expected + 20), "1 mm");
    const work = [...pinned, { did: "measured", readings: { waistGirth: read }, at } as const];
    const begun = padProgress(plan, { work, unit: "cm" });
    expect(classReadings(plan, begun, level, 3).girth).toBeCloseTo(Math.round(expected + 20), 6);
    expect(classReadings(plan, begun, level, 2).girth).toBe(plan.pieces[1]?.readingsAfter[level].girth);
    const gain = (plan.pieces.at(-1)?.readingsAfter[level].girth ?? 0) - expected;
    expect(classReadings(plan, begun, level, plan.pieces.length).girth).toBeCloseTo(
      Math.round(expected + 20) + gain,
      6,
    );
  });
});

describe("the section in the class view", () => {
  test("keeps its frame from the first piece to the last, and holds no length", () => {
    for (const level of plan.levels) {
      const scenes = plan.pieces.map(({ order }) => classScene({ level, pieces: plan.pieces, step: order }));
      const bare = classScene({ level, pieces: plan.pieces, step: 0 });
      for (const scene of scenes) expect(scene.frame).toEqual(bare.frame);
      const words = [...scenes, bare].flatMap(({ title, description, labels }) => [
        title,
        description,
        ...labels.map(({ text }) => text),
      ]);
      expect(words.length).toBeGreaterThan(10);
      for (const text of words) expect(text).not.toMatch(/\d\s*(?:in|cm|mm)\b|\d\/\d/);
    }
  });

  test("picks out the piece that has just gone on, where it crosses the level", () => {
    const level = plan.levels.find(({ name }) => name === "waist");
    if (level === undefined) throw new Error("no waist");
    const roles = (step: number) =>
      classScene({ level, pieces: plan.pieces, step }).marks.filter(
        ({ role, path }) => role === "layerNow" && path !== "",
      ).length;
    expect(roles(0)).toBe(0);
    expect(plan.pieces.some(({ order }) => roles(order) === 1)).toBe(true);
  });
});
