import { expect, test } from "vitest";
import { tautPath } from "../../../src/core/above/tautPath";

test("no point and one point have no length, two their distance", () => {
  expect(tautPath([])).toBe(0);
  expect(tautPath([{ x: 3, out: 4 }])).toBe(0);
  expect(
    tautPath([
      { x: 0, out: 0 },
      { x: 30, out: 40 },
    ]),
  ).toBe(50);
});

/** Broken on purpose: the turn read the other way round. Seen to fail. */
test("a tape bridges a hollow and runs over a hill", () => {
  const over = (out: number) => tautPath([0, 50, 100].map((x) => ({ x, out: x === 50 ? out : 0 })));
  expect(over(-20)).toBe(100);
  expect(over(0)).toBe(100);
  expect(over(20)).toBeCloseTo(2 * Math.hypot(50, 20), 9);
});

test("a step that a tape comes down from is bridged to the end", () => {
  const way = [0, 10, 40, 40, 100].map((x, i) => ({ x, out: i === 1 || i === 2 ? 10 : 0 }));
  expect(tautPath(way)).toBeCloseTo(Math.hypot(10, 10) + 30 + Math.hypot(60, 10), 9);
});

test("coincident points count once, and a half circle is as long as it is", () => {
  const points = Array.from({ length: 721 }, (_, i) => {
    const turn = (Math.PI * i) / 720;
    return { x: -100 * Math.cos(turn), out: 100 * Math.sin(turn) };
  });
  expect(tautPath(points.flatMap((point) => [point, point]))).toBeCloseTo(100 * Math.PI, 2);
});
