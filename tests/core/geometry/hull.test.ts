import { describe, expect, test } from "vitest";
import { hull } from "../../../src/core/geometry/hull";

const cornersOf = (...points: readonly number[]) => [...hull(Float64Array.from(points))];

/** The hull against a library's is in tests/outside; here are the small cases the tape may meet. Broken on purpose: points on an edge kept. Seen to fail. */
describe("what a taut tape touches", () => {
  test("a hollow is bridged", () => {
    expect(cornersOf(0, 0, 10, 0, 10, 10, 5, 2, 0, 10)).toEqual([0, 0, 10, 0, 10, 10, 0, 10]);
  });

  test("points on an edge, and points given twice, are not corners", () => {
    expect(cornersOf(0, 0, 5, 0, 10, 0, 10, 0, 10, 10, 0, 10, 0, 5, 0, 0)).toEqual([0, 0, 10, 0, 10, 10, 0, 10]);
  });

  test("a ring wound the other way comes out anticlockwise all the same", () => {
    expect(cornersOf(0, 10, 10, 10, 10, 0, 0, 0)).toEqual([0, 0, 10, 0, 10, 10, 0, 10]);
  });

  test("a triangle, a line, one point, none", () => {
    expect(cornersOf(0, 0, 4, 0, 0, 3)).toEqual([0, 0, 4, 0, 0, 3]);
    expect(cornersOf(2, 2, 0, 0, 1, 1)).toEqual([0, 0, 2, 2]);
    expect(cornersOf(5, 5)).toEqual([5, 5]);
    expect(cornersOf()).toEqual([]);
  });
});
