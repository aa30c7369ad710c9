import { describe, expect, test } from "vitest";
import { levelNames } from "../../../src/core/body/vocabulary";
import type { FormLines } from "../../../src/core/form/formLines";
import { planFitting } from "../../../src/core/plan/planFitting";
import { mm } from "../../../src/core/units";
import { batting, bodyWith, form, level, lengths } from "./examplePerson";

/**
 * The bare form read on the person's lines. Broken on purpose: a level of the form's own that keeps its front beside what
 * was read on the line; the form's own height of a level in place of the line's. Seen to fail.
 */
const depths = { bust: 232, underbust: 300, waist: 392, highHip: 480, fullHip: 590 } as const;

const person = bodyWith(Object.fromEntries(levelNames.map((name) => [`${name}BelowNape`, depths[name]])));

const read: { readonly [name in (typeof levelNames)[number]]: readonly [girth: number, front: number] } = {
  bust: [884, 476],
  underbust: [768, 402],
  waist: [668, 340],
  highHip: [811, 400],
  fullHip: [921, 447],
};

const lines: FormLines = Object.fromEntries(
  levelNames.map((name) => {
    const [girth, front] = read[name];
    return [name, { depthBelowNape: null, readings: { Girth: mm(girth), FrontArc: mm(front) } }];
  }),
);

/** Another form with the same readings on the lines: other figures and other heights at its own levels. */
const other = lengths({
  ...level("bust", 900, 470),
  ...level("underbust", 790, 420),
  ...level("waist", 690, 370),
  ...level("highHip", 850, 440),
  ...level("fullHip", 960, 490),
  waistBreadth: 262,
  waistDepth: 190,
  shoulderToApex: 240,
  napeToWaist: 420,
  waistToHighHip: 80,
  waistToFullHip: 170,
});

describe("the bare form read on the person's lines", () => {
  const plan = planFitting({ body: person, form, lines, batting });

  test("makes the plan firm: every level stands on what was read there", () => {
    expect(plan.basis).toBe("lines");
    for (const { name, form: known, depthBelowNape } of plan.levels) {
      expect(depthBelowNape.value).toBe(depths[name]);
      const [girth, front] = read[name];
      expect(known.girth.value).toBeCloseTo(girth, 1);
      expect(known.frontArc.value).toBeCloseTo(front, 1);
    }
  });

  test("the form's own levels change no piece and no reading any more", () => {
    expect(planFitting({ body: person, form: other, lines, batting })).toEqual(plan);
    expect(planFitting({ body: person, form: {}, lines, batting })).toEqual(plan);
  });

  test("a line that is not read yet leaves the plan a draft that may miss by more", () => {
    const { waist: _waist, ...rest } = lines;
    const draft = planFitting({ body: person, form, lines: rest, batting });
    expect(draft.basis).toBe("draft");
    expect(draft.mayMiss).toBeGreaterThan(plan.mayMiss);
    expect(planFitting({ body: person, form, batting }).mayMiss).toBeGreaterThan(draft.mayMiss);
  });
});
