import { describe, expect, test } from "vitest";
import { roundCounts, roundPads } from "../../../src/core/padding/rounds";
import { stackThickness } from "../../../src/core/padding/stack";
import { drops, quarter, rowWidths, stationAt, surface } from "./exampleSurface";

const building = { batting: "building", layer: 6 } as const;

/** How thick the rounds lie at each level. */
const thicknesses = (counts: readonly number[]) => {
  const pads = roundPads(counts, surface, building);
  return drops.map((drop) => stackThickness(pads, stationAt(drop))[0] ?? 0);
};

/** Broken on purpose: a layer counted from half of it. Seen to fail. */
describe("rounds", () => {
  test("whole layers only, with a hair of missing batting forgiven", () => {
    expect(roundCounts([0, 5, 5.8, 6, 11.6, 18.1], 6)).toEqual([0, 0, 1, 1, 1, 3]);
    expect(roundCounts([], 6)).toEqual([]);
  });

  test("no layers, no rounds", () => {
    expect(roundPads([0, 0, 0, 0, 0], surface, building)).toEqual([]);
  });

  test("the same all the way down is one strip of so many plies, round the whole girth", () => {
    const pads = roundPads([2, 2, 2, 2, 2], surface, building);
    expect(pads).toHaveLength(1);
    expect(pads[0]?.plies).toBe(2);
    for (const width of rowWidths(pads[0] as (typeof pads)[number])) expect(width).toBeCloseTo(4 * quarter, 6);
    expect(thicknesses([2, 2, 2, 2, 2])).toEqual([12, 12, 12, 12, 12]);
  });

  test("each level carries all of its own layers at full thickness", () => {
    for (const counts of [
      [1, 1, 2, 1, 1],
      [0, 0, 1, 0, 0],
      [2, 1, 0, 1, 3],
    ]) {
      for (const [level, thickness] of thicknesses(counts).entries()) {
        expect(thickness).toBeGreaterThanOrEqual(6 * (counts[level] ?? 0) - 1e-9);
        expect(thickness).toBeLessThan(6 * (counts[level] ?? 0) + 6);
      }
    }
  });

  test("longest runs come first, so that every round lies on one at least as tall", () => {
    const heights = roundPads([1, 1, 3, 2, 1], surface, building).map(
      ({ rows }) => (rows.at(-1)?.drop ?? 0) - (rows[0]?.drop ?? 0),
    );
    expect(heights).toHaveLength(3);
    for (const [i, height] of heights.entries()) if (i > 0) expect(height).toBeLessThanOrEqual(heights[i - 1] ?? 0);
  });
});
