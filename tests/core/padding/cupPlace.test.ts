import { expect, test } from "vitest";
import { guessed } from "../../../src/core/body/reading";
import { sectionOutline } from "../../../src/core/geometry/outline";
import { cupLayers } from "../../../src/core/padding/cupLayers";
import { cupPlaces } from "../../../src/core/padding/cupPlace";
import type { ShapingProblem } from "../../../src/core/padding/shapingProblem";

/** A form that is a circle at every level, and apexes so far apart (mm). */
const radius = 140;
const outline = sectionOutline(
  {
    leftBreadth: radius,
    rightBreadth: radius,
    frontDepth: radius,
    backDepth: radius,
    frontExponent: 2,
    backExponent: 2,
  },
  60,
);
const places = (apart: number) => {
  const at = (value: number) => guessed({ value, standardDeviation: 10 });
  const levels = (["bust", "underbust", "waist", "highHip", "fullHip"] as const).map((name, i) => ({
    name,
    depth: 250 + 90 * i,
    outline,
  }));
  const apex = { leftDepth: at(240), rightDepth: at(255), apart: at(apart) };
  return cupPlaces({ levels, apex } as unknown as ShapingProblem);
};

/** Broken on purpose: a straight line for the way along the surface, an apex beyond the side nowhere. Seen to fail. */
test("a cup lies where the apex is, along the surface, and no farther than three quarters of the way to the side", () => {
  for (const apart of [60, 150, 200])
    expect(places(apart).left.fromFront).toBeCloseTo(radius * Math.asin(apart / 2 / radius), 1);
  const quarter = (Math.PI / 2) * radius;
  for (const apart of [275, 280, 400]) expect(places(apart).left.fromFront).toBeCloseTo(0.75 * quarter, 1);
  const { left, right } = places(150);
  expect([left.depth, right.depth]).toEqual([240, 255]);
  expect(right.fromFront).toBe(left.fromFront);
});

/** Broken on purpose: the discs in the order of their places, largest first. Seen to fail. */
test("from the form outwards the discs of a cup pad grow: the largest is the outermost, against the cup", () => {
  const pads = cupLayers({ cups: places(150), discs: 3 }, 6);
  expect(pads.map(({ zone }) => zone)).toEqual(["leftCup", "rightCup"]);
  for (const { layers } of pads) {
    const widths = layers.map(({ rows }) => Math.max(...rows.map(({ start, end }) => end - start)));
    expect(widths).toHaveLength(3);
    expect(widths).toEqual(widths.toSorted((a, b) => a - b));
    expect((widths[2] ?? 0) - (widths[0] ?? 0)).toBeGreaterThan(20);
  }
});
