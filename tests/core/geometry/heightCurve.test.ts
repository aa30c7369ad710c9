import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { heightCurve } from "../../../src/core/geometry/heightCurve";

const gaps = fc.array(
  fc.record({
    gap: fc.double({ min: 5, max: 200, noNaN: true }),
    value: fc.double({ min: -50, max: 300, noNaN: true }),
  }),
  {
    minLength: 2,
    maxLength: 7,
  },
);

/** Broken on purpose: a slope kept at a turn. Seen to fail. */
describe("a smooth curve over the heights", () => {
  test("goes through what was given, and between two heights never beyond their two values", () => {
    fc.assert(
      fc.property(gaps, (steps) => {
        const heights = steps.map((_, i) => steps.slice(0, i + 1).reduce((sum, { gap }) => sum + gap, 0));
        const values = steps.map(({ value }) => value);
        const at = heightCurve(heights, values);
        for (const [i, height] of heights.entries()) {
          expect(at(height)).toBeCloseTo(values[i] ?? 0, 9);
          const [before, from] = [heights[i - 1], values[i - 1]];
          if (before === undefined || from === undefined) continue;
          const [least, most] = [Math.min(from, values[i] ?? 0), Math.max(from, values[i] ?? 0)];
          for (const share of [0.1, 0.35, 0.5, 0.8]) {
            const value = at(before + share * (height - before));
            expect(value).toBeGreaterThanOrEqual(least - 1e-9);
            expect(value).toBeLessThanOrEqual(most + 1e-9);
          }
        }
      }),
      { seed: 31, numRuns: 200 },
    );
  });

  test("rises all the way where the values do, and has no kink", () => {
    const at = heightCurve([0, 60, 170, 270, 370], [660, 700, 760, 820, 920]);
    let [before, slope] = [at(0), 0];
    for (let height = 1; height <= 370; height++) {
      const next = at(height);
      expect(next).toBeGreaterThanOrEqual(before);
      expect(Math.abs(next - before - slope)).toBeLessThan(0.1);
      [before, slope] = [next, next - before];
    }
  });

  test("is flat at a turn, and keeps its end values beyond the ends", () => {
    const at = heightCurve([0, 100, 200], [10, 40, 10]);
    expect(Math.abs(at(99) - 40)).toBeLessThan(0.1);
    expect(at(-50)).toBe(10);
    expect(at(500)).toBe(10);
  });

  test("one point is a constant; none, or heights that do not rise, are broken promises", () => {
    const at = heightCurve([100], [7]);
    expect([at(0), at(100), at(300)]).toEqual([7, 7, 7]);
    expect(() => heightCurve([], [])).toThrow("one value for each height");
    expect(() => heightCurve([1, 2], [1])).toThrow("one value for each height");
    expect(() => heightCurve([1, 1], [1, 2])).toThrow("increase");
  });
});
