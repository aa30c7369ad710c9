import { describe, expect, test } from "vitest";
import { pointsPerRow } from "../../../src/core/cover/panelMesh";
import { type FlatPoint, panelOutline, type PanelShape } from "../../../src/core/cover/panelShape";
import { turnToGrain } from "../../../src/core/cover/turnToGrain";

/** A panel of some rows, each drawn from left to right: across (-1 to 1) and down (0 to 1). */
const panelOf = (rows: number, place: (across: number, down: number) => FlatPoint): PanelShape => ({
  rows,
  points: Float64Array.from(
    Array.from({ length: rows * pointsPerRow }, (_, i) => {
      const { x, y } = place(
        (2 * (i % pointsPerRow)) / (pointsPerRow - 1) - 1,
        Math.floor(i / pointsPerRow) / (rows - 1),
      );
      return [x, y];
    }).flat(),
  ),
});

/** Broken on purpose: a corner twice, and one of them left out. Seen to fail. */
test("an outline goes around a panel once, every point of its edge in turn", () => {
  const outline = panelOutline(panelOf(5, (x, y) => ({ x: 3 * x, y: -4 * y })));
  const expected: FlatPoint[] = [];
  for (let x = -3; x < 3; x++) expected.push({ x, y: 0 });
  for (let y = 0; y > -4; y--) expected.push({ x: 3, y });
  for (let x = 3; x > -3; x--) expected.push({ x, y: -4 });
  for (let y = -4; y < 0; y++) expected.push({ x: -3, y });
  expect(outline).toHaveLength(expected.length);
  for (const [i, { x, y }] of outline.entries()) {
    expect(x).toBeCloseTo(expected[i]?.x as number, 9);
    expect(y).toBeCloseTo(expected[i]?.y as number, 9);
  }
});

/** Broken on purpose: the middle of the line left out of the spread, its sides exchanged, a sine for its cosine. Seen to fail. */
describe("turned to the grain", () => {
  const angles = [0, 0.4, 1.2, Math.PI / 2, 2, Math.PI, 4, 5.5];
  const turned = (shape: PanelShape, angle: number, right: number, up: number): PanelShape => ({
    ...shape,
    points: shape.points.map((_, i, all) => {
      const [x, y] = [all[i - (i % 2)] as number, all[i - (i % 2) + 1] as number];
      return i % 2 === 0
        ? x * Math.cos(angle) - y * Math.sin(angle) + right
        : x * Math.sin(angle) + y * Math.cos(angle) + up;
    }),
  });
  const near = (one: PanelShape, other: PanelShape) => {
    expect(one.rows).toBe(other.rows);
    for (const [i, value] of one.points.entries()) expect(value).toBeCloseTo(other.points[i] as number, 6);
  };

  test("a straight panel stands upright, its top in the middle at nothing, however it lay", () => {
    const upright = panelOf(6, (x, y) => ({ x: 30 * x * (1 + y), y: -200 * y }));
    for (const angle of angles) near(turnToGrain(turned(upright, angle, 500, -300)), upright);
  });

  test("a bowed panel stands with its ends as far to one side as its middle to the other, on the mean, however it lay", () => {
    const bowed = panelOf(41, (x, y) => ({ x: 30 * x + 20 * Math.sin(Math.PI * y), y: -200 * y }));
    const middles = (shape: PanelShape) =>
      Array.from({ length: shape.rows }, (_, row) => shape.points[2 * (row * pointsPerRow + 3)] as number);
    const stood = turnToGrain(bowed);
    expect(middles(stood).reduce((sum, x) => sum + x, 0)).toBeCloseTo(0, 6);
    expect(middles(stood)[0]).toBeCloseTo(middles(stood).at(-1) as number, 6);
    expect(middles(stood)[20]).toBeGreaterThan(5);
    expect(stood.points[2 * 3 + 1]).toBeCloseTo(0, 9);
    for (const angle of angles) near(turnToGrain(turned(bowed, angle, -70, 900)), stood);
  });
});
