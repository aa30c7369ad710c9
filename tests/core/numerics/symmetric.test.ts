import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Matrix, symmetric } from "../../../src/core/numerics/symmetric";

const times = (matrix: Matrix, right: readonly number[]) =>
  matrix.map((row) => row.reduce((sum, value, j) => sum + value * (right[j] ?? 0), 0));

/** Broken on purpose: the lower triangle used for its transpose. Seen to fail. */
describe("a symmetric positive definite matrix", () => {
  test("one by one, and a diagonal: divided by what stands there", () => {
    expect(symmetric([[4]]).solve([10])[0]).toBeCloseTo(2.5, 12);
    expect(
      symmetric([
        [4, 0],
        [0, 9],
      ]).inverse()[1]?.[1],
    ).toBeCloseTo(1 / 9, 12);
  });

  test("two by two, against the textbook's inverse (d, -b; -b, a) / (ad - b^2)", () => {
    const inverse = symmetric([
      [5, 2],
      [2, 3],
    ]).inverse();
    expect(inverse.flat().map((value) => Math.round(value * 11 * 1e9) / 1e9)).toEqual([3, -2, -2, 5]);
  });

  test("the 3 by 3 Hilbert matrix has the inverse 9 -36 30; -36 192 -180; 30 -180 180 (exact; well known, from memory)", () => {
    const hilbert = [0, 1, 2].map((i) => [0, 1, 2].map((j) => 1 / (i + j + 1)));
    const expected = [9, -36, 30, -36, 192, -180, 30, -180, 180];
    for (const [i, value] of symmetric(hilbert).inverse().flat().entries())
      expect(value).toBeCloseTo(expected[i] ?? 0, 8);
  });

  test("what it solves it solves: the matrix times the answer is the right side", () => {
    const entry = fc.double({ min: -3, max: 3, noNaN: true });
    const square = fc.array(fc.array(entry, { minLength: 5, maxLength: 5 }), { minLength: 5, maxLength: 5 });
    fc.assert(
      fc.property(square, fc.array(entry, { minLength: 5, maxLength: 5 }), (factor, right) => {
        const matrix = factor.map((row, i) =>
          factor.map((other, j) => (times([row], other)[0] as number) + (i === j ? 0.5 : 0)),
        );
        const back = times(matrix, symmetric(matrix).solve(right));
        for (const [i, value] of back.entries()) expect(value).toBeCloseTo(right[i] ?? 0, 7);
      }),
      { seed: 21, numRuns: 100 },
    );
  });

  test("one that is not positive definite is a broken promise", () => {
    expect(() =>
      symmetric([
        [1, 2],
        [2, 1],
      ]),
    ).toThrow("positive definite");
    expect(() => symmetric([[0]])).toThrow("positive definite");
  });

  test("nothing to solve has nothing as its answer", () => {
    expect(symmetric([]).solve([])).toEqual([]);
  });
});
