import { describe, expect, test } from "vitest";
import { quarterLength, quarterPoint, unitQuarter } from "../../../src/core/geometry/superellipse";

/** Lengths against other sources are in tests/outside; here are the small cases, and that the points lie on their curve. */
describe("a quarter of a superellipse", () => {
  test("without depth it is its flat breadth, without breadth its depth, without both nothing", () => {
    expect(quarterLength({ breadth: 120, depth: 0, exponent: 2.4 })).toBeCloseTo(120, 3);
    expect(quarterLength({ breadth: 0, depth: 90, exponent: 2.4 })).toBeCloseTo(90, 3);
    expect(quarterLength({ breadth: 0, depth: 0, exponent: 2 })).toBe(0);
  });

  test("breadth and depth may be exchanged, and twice the size is twice the length", () => {
    const one = quarterLength({ breadth: 130, depth: 80, exponent: 3.1 });
    expect(quarterLength({ breadth: 80, depth: 130, exponent: 3.1 })).toBeCloseTo(one, 9);
    expect(quarterLength({ breadth: 260, depth: 160, exponent: 3.1 })).toBeCloseTo(2 * one, 9);
  });

  /** Broken on purpose: depth and breadth exchanged in the normals. Seen to fail. */
  test.each([2, 2.46, 4.75])(
    "points of exponent %f lie on the curve, from centre to side, with unit normals square to it",
    (exponent) => {
      const [breadth, depth] = [140, 95];
      const unit = unitQuarter(exponent, 40);
      const points = Array.from({ length: unit.count }, (_, i) => quarterPoint(unit, i, breadth, depth));
      expect(points).toHaveLength(81);
      expect(points[0]?.x).toBe(0);
      expect(points.at(-1)?.y).toBe(0);
      for (const [i, { x, y, normalX, normalY }] of points.entries()) {
        expect((x / breadth) ** exponent + (y / depth) ** exponent).toBeCloseTo(1, 9);
        expect(Math.hypot(normalX, normalY)).toBeCloseTo(1, 9);
        const [before, after] = [points[i - 1], points[i + 1]];
        if (before === undefined || after === undefined) continue;
        expect(after.x).toBeGreaterThan(x - 1e-9);
        const [alongX, alongY] = [after.x - before.x, after.y - before.y];
        expect(Math.abs(alongX * normalX + alongY * normalY) / Math.hypot(alongX, alongY)).toBeLessThan(0.06);
      }
    },
  );
});
