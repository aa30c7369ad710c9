import { describe, expect, test } from "vitest";
import { root } from "../../../src/core/numerics/root";

/** Broken on purpose: a search without a change of sign said to have converged. Seen to fail. */
describe("a root between two ends", () => {
  const found = (value: (at: number) => number, from: number, to: number, precision = 1e-9) =>
    root(value, { from, to, precision });

  test.each([
    ["a line", (x: number) => 2 * x - 3, 0, 10, 1.5],
    ["the cube root of 20", (x: number) => x ** 3 - 20, 0, 20, Math.cbrt(20)],
    [
      "a fast growing curve, where false position alone would creep",
      (x: number) => Math.exp(x) - 1000,
      0,
      40,
      Math.log(1000),
    ],
    ["a curve flat at its root", (x: number) => (x - 2) ** 3, 0, 7, 2],
    ["falling instead of rising", (x: number) => 1 - Math.log(x), 1, 10, Math.E],
  ] as const)("%s", (_, value, from, to, expected) => {
    const told = found(value, from, to);
    expect(told.kind).toBe("converged");
    const at = told.kind === "converged" ? told.value : told.nearest;
    expect(Math.abs(value(at))).toBeLessThanOrEqual(1e-9);
    expect(at).toBeCloseTo(expected, 2);
  });

  test("a root at an end is that end", () => {
    expect(found((x) => x - 1, 1, 5)).toEqual({ kind: "converged", value: 1 });
    expect(found((x) => x - 5, 1, 5)).toEqual({ kind: "converged", value: 5 });
  });

  test("no change of sign: gives up, at the end that is nearer, with what it misses", () => {
    expect(found((x) => x + 1, 0, 5)).toEqual({ kind: "gaveUp", nearest: 0, miss: 1 });
    expect(found((x) => x - 9, 0, 5)).toEqual({ kind: "gaveUp", nearest: 5, miss: -4 });
    expect(found(() => Number.NaN, 0, 5).kind).toBe("gaveUp");
  });

  test("a jump over zero ends, and does not claim to have converged", () => {
    const told = found((x) => (x < 2 ? -1 : 1), 0, 5);
    expect(told.kind).toBe("gaveUp");
  });
});
