import { describe, expect, test } from "vitest";
import { sectionOutline } from "../../../src/core/geometry/outline";
import { reachOf, supportAt, supportsOf } from "../../../src/core/geometry/support";
import { mm, ratio } from "../../../src/core/units";

const ellipse = {
  leftBreadth: mm(160),
  rightBreadth: mm(160),
  frontDepth: mm(110),
  backDepth: mm(110),
  frontExponent: ratio(2),
  backExponent: ratio(2),
};
/** The support of an ellipse, by its textbook formula. */
const ofEllipse = (angle: number): number => Math.hypot(160 * Math.cos(angle), 110 * Math.sin(angle));
const directions = Array.from({ length: 50 }, (_, i) => -7 + 0.31 * i);
const lines = (support: (angle: number) => number, count: number) =>
  Array.from({ length: count }, (_, i) => support((2 * Math.PI * i) / count));

/** Broken on purpose: a direction's neighbors exchanged, the angle past it not taken off, a sine for its cosine. Seen to fail. */
describe("how far a section reaches in a direction", () => {
  test("an ellipse, as its formula says", () => {
    for (const angle of directions) expect(supportAt(ellipse, angle)).toBeCloseTo(ofEllipse(angle), 9);
    expect(supportsOf(ellipse, 16)).toEqual(lines((angle) => supportAt(ellipse, angle), 16));
  });

  test("known in some directions, between them to the corner of their lines: of a single point exactly", () => {
    const point = (angle: number) => 40 * Math.cos(angle) - 15 * Math.sin(angle);
    for (const angle of directions)
      expect(supportAt({ support: lines(point, 12) }, angle)).toBeCloseTo(point(angle), 9);
  });

  test("of a circle no nearer than the circle, and at most out to the corners of its polygon", () => {
    const support = lines(() => 100, 8);
    for (const angle of directions) {
      expect(supportAt({ support }, angle)).toBeGreaterThan(100 - 1e-9);
      expect(supportAt({ support }, angle)).toBeLessThan(100 / Math.cos(Math.PI / 8) + 1e-9);
    }
    expect(supportAt({ support }, Math.PI / 8)).toBeCloseTo(100 / Math.cos(Math.PI / 8), 9);
  });

  test("to the four sides", () => {
    const support = lines((angle) => ofEllipse(angle) + 20 * Math.cos(angle) + 5 * Math.sin(angle), 360);
    const { left, right, front, back } = reachOf({ support });
    for (const [found, wanted] of [
      [left, 180],
      [right, 140],
      [front, 115],
      [back, 105],
    ] as const)
      expect(found).toBeCloseTo(wanted, 6);
    expect(reachOf(ellipse)).toEqual({ left: 160, right: 160, front: 110, back: 110 });
  });
});

/** Broken on purpose: normals turned inward, the ends' shares exchanged. Seen to fail. */
test("a section known by its directions is drawn along its curve, with normals square to it", () => {
  const outline = sectionOutline({ support: lines(ofEllipse, 24) }, 30);
  for (let i = 0; i < outline.count; i++) {
    const [x, y] = [outline.x[i] as number, outline.y[i] as number];
    expect(Math.abs(Math.hypot(x / 160, y / 110) - 1)).toBeLessThan(0.004);
    const [gradientX, gradientY] = [x / 160 ** 2, y / 110 ** 2];
    const size = Math.hypot(gradientX, gradientY);
    const agrees =
      (outline.normalX[i] as number) * (gradientX / size) + (outline.normalY[i] as number) * (gradientY / size);
    expect(agrees).toBeGreaterThan(0.9995);
  }
});

/** A circle beside the middle: its quarters are its radius times the angles between the axes. Broken on purpose: a quarter's end added instead of taken off, arc lengths counted from center back. Seen to fail. */
test("a section beside its middle has the quarters of its own curve, each with its points, and center front at nothing", () => {
  const [radius, right, up, perQuarter] = [120, 30, -20, 40];
  const circle = (angle: number) => radius + right * Math.cos(angle) + up * Math.sin(angle);
  const outline = sectionOutline({ support: lines(circle, 96) }, perQuarter / 2);
  const [across, along] = [Math.asin(-right / radius), Math.asin(-up / radius)];
  const turn = Math.PI / 2;
  const wanted = {
    leftFront: radius * (turn - across - along),
    rightFront: radius * (turn + across - along),
    leftBack: radius * (turn - across + along),
    rightBack: radius * (turn + across + along),
  };
  for (const part of ["leftFront", "rightFront", "leftBack", "rightBack"] as const)
    expect(outline.quarters[part]).toBeCloseTo(wanted[part], 1);
  expect(outline.count).toBe(4 * perQuarter);
  expect(outline.arcLength[0]).toBeCloseTo(-wanted.rightBack - wanted.rightFront, 1);
  expect(outline.arcLength[2 * perQuarter]).toBeCloseTo(0, 6);
  for (const at of [0, 2]) expect(outline.x[at * perQuarter]).toBeCloseTo(0, 6);
  for (const at of [1, 3]) expect(outline.y[at * perQuarter]).toBeCloseTo(0, 6);
  const ways = Array.from(
    { length: 4 * perQuarter - 1 },
    (_, i) => (outline.arcLength[i + 1] as number) - (outline.arcLength[i] as number),
  );
  // On a circle neither length nor turning asks for points anywhere more than elsewhere in a quarter.
  for (const [i, way] of ways.entries()) {
    const part = (["rightBack", "rightFront", "leftFront", "leftBack"] as const)[Math.floor(i / perQuarter)];
    expect(way).toBeCloseTo(wanted[part as keyof typeof wanted] / perQuarter, 0);
  }
});

test("a section that does not lie around its middle is a broken promise", () => {
  const beside = lines((angle) => 50 + 90 * Math.cos(angle), 24);
  expect(() => sectionOutline({ support: beside }, 20)).toThrow("around its middle");
});
