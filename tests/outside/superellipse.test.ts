import ellipe from "@stdlib/math-base-special-ellipe";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quarterLength } from "../../src/core/geometry/superellipse";

/**
 * Perimeters of the sections against values the core had no hand in.
 *
 * Exponent 2: Legendre's complete elliptic integral of the second kind, E(m), from a numerics package; the quarter of an
 * ellipse with half-axes a >= b is a E(1 - b^2/a^2) (Abramowitz and Stegun 1964, chapter 17).
 */
const ellipseQuarter = (breadth: number, depth: number) => {
  const [long, short] = breadth >= depth ? [breadth, depth] : [depth, breadth];
  return long * ellipe(1 - (short / long) ** 2);
};

const halfAxis = fc.double({ min: 40, max: 300, noNaN: true });

describe("quarter of a superellipse", () => {
  test("exponent 2 is the elliptic integral, to a hundredth of a millimetre", () => {
    fc.assert(
      fc.property(halfAxis, halfAxis, (breadth, depth) => {
        expect(quarterLength({ breadth, depth, exponent: 2 })).toBeCloseTo(ellipseQuarter(breadth, depth), 2);
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  test("the numerics package gives the printed E(1/2) = 1.35064 38810 (Abramowitz and Stegun 1964, table 17.1; value from memory)", () => {
    expect(ellipe(0.5)).toBeCloseTo(1.350643881, 9);
  });

  test("exponent 2 with equal half-axes is a quarter of 2 pi r (exact)", () => {
    expect(quarterLength({ breadth: 150, depth: 150, exponent: 2 })).toBeCloseTo((Math.PI * 150) / 2, 4);
  });

  test("exponent 1 is a straight line: a rhombus (exact)", () => {
    for (const [breadth, depth] of [
      [120, 80],
      [60, 200],
      [100, 100],
    ] as const) {
      expect(quarterLength({ breadth, depth, exponent: 1 })).toBeCloseTo(Math.hypot(breadth, depth), 8);
    }
  });

  test("exponent 4 with unit half-axes: the whole is 7.01769 79 (the squircle's length, OEIS A186642; value from memory)", () => {
    expect(4 * quarterLength({ breadth: 1, depth: 1, exponent: 4 })).toBeCloseTo(7.0176979, 4);
  });

  /**
   * For any exponent n >= 1 the quarter is a curve that falls all the way and passes its diagonal point (a c, b c) with
   * c = 2^(-1/n). So it is at least the two chords through that point, and at most what the box through it allows: from
   * (0, b) to the diagonal point the convex curve stays inside the triangle cut off by its tangents, and the two sides
   * of the bounding box sum to a + b. For n to infinity both bounds close on the rectangle.
   */
  test("every exponent lies between the chords through its diagonal point and the rectangle (exact bounds)", () => {
    fc.assert(
      fc.property(halfAxis, halfAxis, fc.double({ min: 1, max: 12, noNaN: true }), (breadth, depth, exponent) => {
        const c = 2 ** (-1 / exponent);
        const chords = Math.hypot(breadth * c, depth * (1 - c)) + Math.hypot(breadth * (1 - c), depth * c);
        const length = quarterLength({ breadth, depth, exponent });
        expect(length).toBeGreaterThanOrEqual(chords - 0.01);
        expect(length).toBeLessThanOrEqual(breadth + depth + 0.01);
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  test("a very large exponent is a rectangle (exact limit)", () => {
    expect(quarterLength({ breadth: 120, depth: 80, exponent: 200 })).toBeGreaterThan(199);
    expect(quarterLength({ breadth: 120, depth: 80, exponent: 200 })).toBeLessThan(200);
  });

  test("a larger exponent is never shorter: the boxier curve encloses the other, and both are convex", () => {
    fc.assert(
      fc.property(
        halfAxis,
        halfAxis,
        fc.double({ min: 1, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (breadth, depth, exponent, more) => {
          const shorter = quarterLength({ breadth, depth, exponent });
          expect(quarterLength({ breadth, depth, exponent: exponent + more })).toBeGreaterThanOrEqual(shorter - 0.01);
        },
      ),
      { seed: 4, numRuns: 200 },
    );
  });
});
