import { describe, expect, test } from "vitest";
import { type MeasurementName, measurementNames } from "../../src/core/body/vocabulary";
import { type FigureShape, formShape, personShape } from "../../src/ui/drawing/measuring/tapeRoute";
import { levelOf, measureRoute } from "../../src/ui/drawing/measuring/measureRoute";
import type { PicturePoint } from "../../src/ui/drawing/scene";
import { lineLength } from "./lineLength";
import { measureScene } from "../../src/ui/drawing/measuring/measureScene";

const figures = [
  ["body", personShape],
  ["form", formShape],
] as const;

const reach = (points: readonly PicturePoint[]): number =>
  points.reduce((most, { x }) => Math.max(most, Math.abs(x)), 0);
const tapeOf = (name: MeasurementName, shape: FigureShape): readonly PicturePoint[] =>
  measureRoute(name, shape).tapes[0] ?? [];

describe.each(figures)("how the tape runs on the %s", (whose, shape) => {
  test("every measurement has a tape or a straight line, inside its picture", () => {
    for (const name of measurementNames) {
      const route = measureRoute(name, shape);
      const lines = [...route.tapes, ...route.straight.map(({ from, to }) => [from, to])];
      expect(lines.length, name).toBeGreaterThan(0);
      const { frame } = measureScene(name, whose);
      for (const { x, y } of lines.flat()) {
        expect(x, name).toBeGreaterThanOrEqual(frame.x);
        expect(x, name).toBeLessThanOrEqual(frame.x + frame.width);
        expect(y, name).toBeGreaterThanOrEqual(frame.y);
        expect(y, name).toBeLessThanOrEqual(frame.y + frame.height);
      }
    }
  });

  test("the left and right halves of an arc together are the arc, and mirror each other", () => {
    const arcs = measurementNames.filter(
      (name) => levelOf(name)?.reading === "FrontArc" || levelOf(name)?.reading === "BackArc",
    );
    expect(arcs.length).toBe(10);
    for (const name of arcs) {
      const { level, reading } = levelOf(name) ?? { level: "waist", reading: "FrontArc" };
      const half = (side: "Left" | "Right") =>
        tapeOf(`${level}${side}${reading === "FrontArc" ? "FrontArc" : "BackArc"}`, shape);
      const [left, right] = [half("Left"), half("Right")];
      expect(lineLength(left) + lineLength(right)).toBeCloseTo(lineLength(tapeOf(name, shape)), 0);
      for (const [i, { x }] of left.entries()) expect(x + (right[i]?.x ?? Number.NaN)).toBeCloseTo(0, 6);
    }
  });

  test("the wearer's left is on the right of the page from the front and on the left from behind", () => {
    expect(tapeOf("waistLeftFrontArc", shape).at(-1)?.x).toBeGreaterThan(0);
    expect(tapeOf("waistLeftBackArc", shape).at(-1)?.x).toBeLessThan(0);
    expect(tapeOf("leftShoulderLength", shape).at(-1)?.x).toBeGreaterThan(0);
    expect(tapeOf("rightShoulderToApex", shape).at(-1)?.x).toBeLessThan(0);
    expect(reach(tapeOf("waistToFloorLeft", shape))).toBeGreaterThan(shape.half(shape.depths.waist));
  });

  test("a tape to the floor ends on the floor", () => {
    for (const name of ["waistToFloorFront", "waistToFloorBack", "waistToFloorLeft", "waistToFloorRight"] as const) {
      expect(tapeOf(name, shape).at(-1)?.y).toBe(shape.floor);
      expect(tapeOf(name, shape)[0]?.y).toBe(shape.depths.waist);
    }
  });
});
