import { describe, expect, test } from "vitest";
import { contourHeight, featherFor, type Hill, hillPads, slabs } from "../../../src/core/padding/hill";
import { padArea } from "../../../src/core/padding/pinningOrder";
import { drops, quarter, rowGaps, rowWidths, surface } from "./exampleSurface";

const building = { batting: "building", layer: 7 } as const;
const finishing = { batting: "finishing", layer: 3 } as const;
const none = () => 0;

/** A hill that is high at the waist and falls to nothing at the bust and the full hip. */
const crown = (height: number) => (drop: number) => Math.max(0, height * (1 - ((drop - 390) / 190) ** 2));
const hill = (zone: Hill["zone"], left: number, right = left, trim = none): Hill => ({
  zone,
  left: { crown: crown(left), trim },
  right: { crown: crown(right), trim },
});

/** Broken on purpose: runs shorter than a hand kept; left and right exchanged behind. Seen to fail. */
describe("a hill cut into pads", () => {
  const stack = slabs({ inner: building, outer: building }, 1, 60);

  test("no hill, or one lower than half a layer, has no pads", () => {
    expect(hillPads(hill("front", 0), surface, stack)).toEqual([]);
    expect(hillPads(hill("front", 3.4), surface, stack)).toEqual([]);
  });

  test("every row is at least 40 mm wide and at most 20 mm below the one above, every pad at least 40 mm tall", () => {
    for (const height of [8, 15, 31, 60]) {
      for (const zone of ["front", "back"] as const) {
        const pads = hillPads(hill(zone, height, 0.7 * height), surface, stack);
        expect(pads.length).toBeGreaterThan(0);
        for (const pad of pads) {
          expect(Math.min(...rowWidths(pad))).toBeGreaterThanOrEqual(40 - 1e-6);
          expect(Math.max(...rowGaps(pad))).toBeLessThanOrEqual(20);
          expect(Math.min(...rowGaps(pad))).toBeGreaterThan(0);
          expect((pad.rows.at(-1)?.drop ?? 0) - (pad.rows[0]?.drop ?? 0)).toBeGreaterThanOrEqual(40);
        }
      }
    }
  });

  test("as many pads as half layers are reached: layer k covers where the hill is higher than (k - 1/2) layers", () => {
    expect(hillPads(hill("front", 7 * 1.9), surface, stack)).toHaveLength(2);
    expect(hillPads(hill("front", 7 * 4.2), surface, stack)).toHaveLength(4);
  });

  test("comes small to large, each within the next", () => {
    const areas = hillPads(hill("front", 40), surface, stack).map(padArea);
    expect(areas.length).toBeGreaterThan(3);
    for (const [i, area] of areas.entries()) if (i > 0) expect(area).toBeGreaterThan(areas[i - 1] ?? 0);
  });

  test("the side with the higher crown reaches further, in front and behind as the wearer has it", () => {
    const front = hillPads(hill("front", 30, 12), surface, stack).at(-1);
    const back = hillPads(hill("back", 30, 12), surface, stack).at(-1);
    const at = (pad: typeof front) => pad?.rows.find(({ drop }) => drop >= drops[2]) ?? { start: 0, end: 0 };
    expect(at(front).end).toBeGreaterThan(-at(front).start);
    // Positive is the wearer's left; centre back lies half a girth away, and her left is on this side of it.
    expect(2 * quarter - at(back).start).toBeGreaterThan(at(back).end - 2 * quarter);
  });

  test("stays short of the side seam however wide it is trimmed, and a trim below nothing narrows it", () => {
    const widest = (trim: number) =>
      Math.max(
        ...hillPads(
          hill("front", 60, 60, () => trim),
          surface,
          stack,
        ).flatMap(rowWidths),
      );
    expect(widest(5)).toBeLessThan(2 * quarter);
    expect(widest(-0.3)).toBeLessThan(0.8 * widest(0));
  });

  test("a stack has one single ply outside, of the finishing batting if there is one, and pads of several plies within", () => {
    const both = slabs({ inner: building, outer: finishing }, 3, 40);
    expect(both[0]).toEqual({ batting: "finishing", plies: 1, from: 0, to: 3 });
    expect(both[1]).toEqual({ batting: "building", plies: 3, from: 3, to: 24 });
    expect(contourHeight(both.at(-1) ?? (both[0] as (typeof both)[number]))).toBeGreaterThanOrEqual(40);
    for (const [i, slab] of both.entries()) if (i > 0) expect(slab.from).toBe(both[i - 1]?.to);
  });

  test("a feather is three thicknesses, never under two fingers, never over 60 mm", () => {
    expect([1, 10, 15, 50].map(featherFor)).toEqual([25, 30, 45, 60]);
  });
});
