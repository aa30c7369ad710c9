import { describe, expect, test } from "vitest";
import { tautRing } from "../../../src/core/geometry/tautRing";

const cornersOf = (...points: readonly number[]) => [...tautRing(Float64Array.from(points))];

/** The ring against a library's hull is in tests/outside; here are the small cases the tape may meet. Broken on purpose: points on an edge kept. Seen to fail. */
describe("what a taut tape touches", () => {
  test("a hollow is bridged", () => {
    expect(cornersOf(0, 0, 0, 10, 5, 2, 10, 10, 10, 0)).toEqual([0, 0, 0, 10, 10, 10, 10, 0]);
  });

  test("points on an edge, and points given twice, are not corners", () => {
    expect(cornersOf(5, 0, 0, 0, 0, 0, 0, 5, 0, 10, 10, 10, 10, 10, 10, 0, 8, 0)).toEqual([0, 0, 0, 10, 10, 10, 10, 0]);
  });

  test("wherever the ring begins, its corners are the same", () => {
    const ring = [0, 0, 0, 10, 4, 3, 10, 10, 10, 0, 5, 1];
    for (let turn = 0; turn < ring.length; turn += 2)
      expect(cornersOf(...ring.slice(turn), ...ring.slice(0, turn))).toEqual([0, 0, 0, 10, 10, 10, 10, 0]);
  });

  /** Seen to fail before such points were taken as one: the way from one to the other turns anywhere, and both stay. */
  test("points that rounding puts beside one another are one", () => {
    for (let degrees = 0; degrees < 360; degrees += 15) {
      const [x, y] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const hollow = [4, 3, 4 + 1e-12 * x, 3 + 1e-12 * y, 4, 3];
      expect(cornersOf(0, 0, 0, 10, ...hollow, 10, 10, 10, 0)).toEqual([0, 0, 0, 10, 10, 10, 10, 0]);
    }
  });

  test("a triangle, the same point twice, one point, none", () => {
    expect(cornersOf(0, 0, 0, 3, 4, 0)).toEqual([0, 0, 0, 3, 4, 0]);
    expect(cornersOf(5, 5, 5, 5)).toEqual([5, 5]);
    expect(cornersOf(5, 5)).toEqual([5, 5]);
    expect(cornersOf()).toEqual([]);
  });
});
