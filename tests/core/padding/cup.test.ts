import { describe, expect, test } from "vitest";
import { type Cup, cupPads } from "../../../src/core/padding/cup";
import { slabs } from "../../../src/core/padding/hill";
import { rowGaps, rowWidths } from "./exampleSurface";

const building = { batting: "building", layer: 6 } as const;
const stack = slabs({ inner: building, outer: building }, 1, 80);
const cup = (crown: number, trim = 0): Cup => ({ zone: "leftCup", along: 90, drop: 230, radius: 70, crown, trim });

const middle = (rows: readonly { readonly drop: number }[]) => ((rows[0]?.drop ?? 0) + (rows.at(-1)?.drop ?? 0)) / 2;

/** Broken on purpose: the radius shrunk half as fast with the height. Seen to fail. */
describe("the filling of a cup", () => {
  test("no projection needs no disc, and half a layer none either", () => {
    expect(cupPads(cup(0), stack)).toEqual([]);
    expect(cupPads(cup(3), stack)).toEqual([]);
  });

  test("as many discs as half layers of projection, shrinking towards the tape's high point, smallest first", () => {
    const discs = cupPads(cup(30), stack);
    expect(discs).toHaveLength(5);
    const widths = discs.map((disc) => Math.max(...rowWidths(disc)));
    for (const [i, width] of widths.entries()) if (i > 0) expect(width).toBeGreaterThan(widths[i - 1] ?? 0);
    // A dome 1 - (r/R)²: the disc at the height h has the radius R √(1 - h/H); the outermost lies at half a layer.
    expect(widths.at(-1)).toBeCloseTo(2 * 70 * Math.sqrt(1 - 3 / 30), 6);
  });

  test("a larger projection never has fewer discs or a smaller outermost one", () => {
    let [count, width] = [0, 0];
    for (let crown = 4; crown <= 60; crown += 4) {
      const discs = cupPads(cup(crown), stack);
      const widest = Math.max(0, ...discs.flatMap(rowWidths));
      expect(discs.length).toBeGreaterThanOrEqual(count);
      expect(widest).toBeGreaterThanOrEqual(width);
      [count, width] = [discs.length, widest];
    }
    expect(count).toBeGreaterThan(6);
  });

  test("every disc is centred on the apex and nowhere narrower than a hand can pin", () => {
    for (const crown of [7, 20, 45]) {
      for (const { rows, ...disc } of cupPads(cup(crown, 0.2), stack)) {
        expect(middle(rows)).toBeCloseTo(230, 6);
        for (const { start, end } of rows) expect((start + end) / 2).toBeCloseTo(90, 6);
        expect(Math.min(...rowWidths({ ...disc, rows }))).toBeGreaterThanOrEqual(40);
        expect(Math.max(...rowGaps({ ...disc, rows }))).toBeLessThanOrEqual(20);
      }
    }
  });

  test("a disc too small to pin is cut at the smallest size and pulled thin over a longer way", () => {
    const [smallest] = cupPads(cup(16.2), stack);
    expect(Math.max(...rowWidths(smallest ?? fail()))).toBeCloseTo(58.4, 6);
    expect(smallest?.feather).toBeGreaterThan(25);
  });

  const fail = (): never => {
    throw new Error("no disc");
  };
});
