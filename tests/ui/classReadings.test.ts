import { describe, expect, test } from "vitest";
import { padProgress } from "../../src/app/progress/padProgress";
import { levelNames } from "../../src/core/body/vocabulary";
import { formatLength } from "../../src/core/lengthText";
import { mm } from "../../src/core/units";
import { pieceToFile } from "../../src/document/pieceFile";
import { madeUpPeople, madeUpPerson } from "../../src/app/classView/classPeople";
import { type ClassTyped, type TypedReading, typedDoubt, withTyped } from "../../src/app/classView/classTyped";
import { classReadings, classView } from "../../src/app/classView/classView";
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

describe("what a class reads and somebody types", () => {
  const person = madeUpPerson(0);
  const { steps } = person.job;
  const at = steps.findIndex(({ step }) => step.do === "read");
  const later = steps.findLastIndex(({ step }) => step.do === "read");
  const viewAt = (step: number, typed: ClassTyped) =>
    classView(person, { person: 0, step, level: "waist", figures: "shown" }, "in", typed);
  const as = (length: number): TypedReading => ({ text: "x", unit: "in", length: mm(length) });

  /** Seen to fail: where the plan's own figures came back at the next step. */
  test("is what the tape reads there, and counts at every later step with what the plan adds", () => {
    expect(later).toBeGreaterThan(at);
    const planned = (step: number) => viewAt(step, {})?.readings.girth ?? 0;
    const typed = withTyped({}, at, "waistGirth", as(planned(at) - 15));
    expect(viewAt(at, typed)?.readings.girth).toBeCloseTo(planned(at) - 15, 6);
    expect(viewAt(at, typed)?.isRead).toEqual({ girth: true, frontArc: false, backArc: false });
    expect(viewAt(at - 1, typed)?.readings.girth).toBe(planned(at - 1));
    expect(planned(later) - planned(at)).toBeGreaterThan(1);
    expect(viewAt(later, typed)?.readings.girth).toBeCloseTo(planned(later) - 15, 6);
    expect(viewAt(later, typed)?.isRead.girth).toBe(false);
    const both = withTyped(typed, at, "waistFrontArc", as(400));
    expect(viewAt(at, both)?.readings).toEqual({ girth: planned(at) - 15, frontArc: 400, backArc: planned(at) - 415 });
    expect(viewAt(at, withTyped(both, at, "waistGirth", null))?.readings.frontArc).toBe(400);
    expect(viewAt(at, withTyped(typed, at, "waistGirth", null))?.readings.girth).toBe(planned(at));
  });

  /** Seen to fail: with the table over the cover on target beside a figure to expect that was not. */
  test("over the cover the table and the figure to expect are the same", () => {
    for (let i = 0; i < madeUpPeople; i++) {
      const sample = madeUpPerson(i);
      const place = sample.job.steps.findIndex(({ step }) => step.do === "read-cover");
      for (const level of levelNames) {
        const view = classView(sample, { person: i, step: place, level, figures: "shown" }, "in");
        expect(view?.readings.girth).toBeCloseTo(view?.step.expected[`${level}Girth`] ?? 0, 6);
        expect(view?.readings.frontArc).toBeCloseTo(view?.step.expected[`${level}FrontArc`] ?? 0, 6);
      }
    }
  });

  test("that cannot be is questioned, and what can be is not", () => {
    const bare = { girth: mm(600), frontArc: mm(300), backArc: mm(300) };
    expect(typedDoubt({ waistGirth: as(580) }, "waist", bare)).toBe("lessThanBare");
    expect(typedDoubt({ waistGirth: as(598) }, "waist", bare)).toBeNull();
    expect(typedDoubt({ waistGirth: as(580) }, "waist", null)).toBeNull();
    expect(typedDoubt({ waistGirth: as(580), waistFrontArc: as(581) }, "waist", null)).toBe("frontIsMore");
    expect(typedDoubt({ waistGirth: as(700), waistFrontArc: as(701) }, "waist", bare)).toBe("frontIsMore");
    expect(typedDoubt({ trialBare: as(600), trialWrapped: as(600) }, "waist", bare)).toBe("wrappedIsLess");
    expect(typedDoubt({ trialBare: as(600), trialWrapped: as(700) }, "waist", bare)).toBeNull();
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
