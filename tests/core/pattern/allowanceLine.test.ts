import { expect, test } from "vitest";
import { allowanceLine } from "../../../src/core/pattern/allowanceLine";

const at = (x: number, y: number) => ({ x, y });
const edges = (corners: readonly ReturnType<typeof at>[], by: number) =>
  corners.map((corner, i) => ({ line: [corner, corners[(i + 1) % corners.length] as typeof corner], by }));
const rounded = (line: readonly ReturnType<typeof at>[]) =>
  line.map(({ x, y }) => [x, y].map((value) => Math.round(100 * value) / 100 + 0));

/** Clockwise, as outlines run here. Broken on purpose: moved inward; corners not mitered. Seen to fail. */
test("a square's is a larger square; an edge of another allowance stands farther out", () => {
  const square = [at(0, 100), at(100, 100), at(100, 0), at(0, 0)];
  expect(rounded(allowanceLine(edges(square, 10)))).toEqual([
    [-10, 110],
    [110, 110],
    [110, -10],
    [-10, -10],
  ]);
  const hemmed = edges(square, 10).map((edge, i) => (i === 2 ? { ...edge, by: 25 } : edge));
  expect(rounded(allowanceLine(hemmed)).map(([, y]) => y)).toEqual([110, 110, -25, -25]);
});

/** Broken on purpose: no limit; cut off at one end only. Seen to fail. */
test("the tip of a sharp corner is cut off square, two allowances out", () => {
  const spike = [at(0, 10), at(200, 0), at(0, -10)];
  const line = rounded(allowanceLine(edges(spike, 10)));
  expect(line).toHaveLength(4);
  expect(line.filter(([x]) => x === 220).map(([, y]) => Math.abs(y as number))).toEqual([9.01, 9.01]);
});

/** Broken on purpose: the crossing of two lines that do not cross. Seen to fail. */
test("edges that run straight on meet where they end", () => {
  const straight = [at(0, 100), at(50, 100), at(100, 100), at(100, 0), at(0, 0)];
  expect(rounded(allowanceLine(edges(straight, 10)))[1]).toEqual([50, 110]);
});
