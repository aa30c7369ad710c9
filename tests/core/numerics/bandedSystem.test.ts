import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bandedSolver } from "../../../src/core/numerics/bandedSystem";

/** Broken on purpose: the last entry of the band left out when solving backwards. Seen to fail. */
describe("a banded system", () => {
  test("solved, gives its right-hand side back when it is multiplied again, for any size and band", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 6 }), fc.integer(), (size, band, seed) => {
        let state = Math.abs(seed % 2_147_483_646) + 1;
        const chance = () => {
          state = (state * 16_807) % 2_147_483_647;
          return state / 2_147_483_647 - 0.5;
        };
        const width = band + 1;
        const entries = new Float64Array(size * width);
        // The diagonal outweighs its row, so that the matrix is positive definite.
        for (let row = 0; row < size; row++)
          for (let k = 0; k <= band; k++)
            if (row + k >= band) entries[row * width + k] = k === band ? 8 + chance() : chance();
        const at = (i: number, j: number): number => {
          const [row, column] = [Math.max(i, j), Math.min(i, j)];
          return row - column > band ? 0 : (entries[row * width + column - row + band] as number);
        };
        const right = Float64Array.from({ length: size }, () => 10 * chance());
        const found = right.slice();
        bandedSolver({ size, band, entries })(found);
        for (let i = 0; i < size; i++) {
          const again = found.reduce((sum, value, j) => sum + value * at(i, j), 0);
          expect(again).toBeCloseTo(right[i] as number, 9);
        }
      }),
    );
  });

  test("that is not positive definite is a broken promise", () => {
    expect(() => bandedSolver({ size: 2, band: 1, entries: Float64Array.of(0, 1, 2, 1) })).toThrow();
  });
});
