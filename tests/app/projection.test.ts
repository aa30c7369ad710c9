import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { calibrated, isThrow, thrownPart, turnThatFits, wordBeside } from "../../src/app/patterns/projection";
import { seamNames } from "../../src/app/patterns/seamNames";
import { patternsOfText } from "../../src/command/patternsOfText";
import { untriedKnit, usualStretch } from "../../src/core/cover/cloth";
import { partFrame, partOutline } from "../../src/core/pattern/patternPart";

const demo = readFileSync(resolve(import.meta.dirname, "../../shared/demo-fitting.json"), "utf8");
const whole = readFileSync(resolve(import.meta.dirname, "../../shared/demo/whole-job.json"), "utf8");
const made = patternsOfText(demo, untriedKnit(usualStretch));
if (!made.ok) throw new Error("no patterns");
const { parts } = made.value;

interface Point {
  readonly x: number;
  readonly y: number;
}
const away = (points: readonly Point[], from: Point): readonly number[] =>
  points.map(({ x, y }) => Math.hypot(x - from.x, y - from.y));
const turned = (points: readonly Point[]): number =>
  points.reduce((sum, { x, y }, i) => {
    const next = points[(i + 1) % points.length] as Point;
    return sum + x * next.y - next.x * y;
  }, 0);

/** Whether a place lies within an outline: a ray from it crosses the outline an odd number of times. */
const isInside = (outline: readonly Point[], { x, y }: Point): boolean =>
  outline.filter((from, i) => {
    const to = outline[(i + 1) % outline.length] as Point;
    return from.y > y !== to.y > y && x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x);
  }).length %
    2 ===
  1;

describe("a part thrown onto the table", () => {
  /** Broken on purpose: mirrored only across, so that it is sheared; divided where it is multiplied. Seen to fail. */
  test("measures what was planned, however it is turned and mirrored, and lies in the picture", () => {
    for (const { part } of parts) {
      for (const mmPerPixel of [0.1, 0.2646, 0.55, 1.2]) {
        for (const turn of [0, 15, 90, 225]) {
          for (const isMirrored of [false, true]) {
            const thrown = thrownPart(part, { mmPerPixel, turn, isMirrored });
            const planned = [partOutline(part), ...part.lines.map(({ points }) => points)];
            const outline = thrown.lines.filter(({ kind }) => kind !== "notch");
            expect(outline).toHaveLength(planned.length);
            const [origin, thrownOrigin] = [planned[0]?.[0] as Point, outline[0]?.points[0] as Point];
            for (const [i, line] of planned.entries()) {
              const own = outline[i]?.points ?? [];
              const [one, other] = [away(line, origin), away(own, thrownOrigin)];
              for (const [k, distance] of one.entries())
                expect(Math.abs(distance - mmPerPixel * (other[k] ?? 0))).toBeLessThan(0.2);
            }
            // On the picture y runs down: what runs counterclockwise keeps its way only when it is mirrored.
            expect(Math.sign(turned(outline[0]?.points ?? []))).toBe(isMirrored ? 1 : -1);
            for (const { points } of thrown.lines)
              for (const { x, y } of points) {
                expect(Math.min(x, y)).toBeGreaterThan(-0.001);
                expect(x).toBeLessThan(thrown.width + 0.001);
                expect(y).toBeLessThan(thrown.height + 0.001);
              }
          }
        }
      }
    }
  });

  /** Broken on purpose: the turn that was tried last kept. Seen to fail. */
  test("is turned so that it fits, as little as may be; one that fits no way shows as much as it can", () => {
    const panel = parts.find(({ part }) => part.kind === "cover")?.part;
    if (panel === undefined) throw new Error("no panel");
    const { width, height } = partFrame(panel);
    expect(height).toBeGreaterThan(width);
    const room = (across: number, down: number) => ({ width: across, height: down });
    expect(turnThatFits(panel, 1, room(width + 40, height + 40))).toEqual({ turn: 0, fits: true });
    expect(turnThatFits(panel, 1, room(height + 40, width + 40))).toEqual({ turn: 90, fits: true });
    expect(turnThatFits(panel, 2, room(height / 2 + 40, width / 2 + 40))).toEqual({ turn: 90, fits: true });
    expect(turnThatFits(panel, 1, room(100, 60)).fits).toBe(false);
    const askew = turnThatFits(panel, 1, room(height * 0.97, height * 0.9));
    expect(askew.fits).toBe(true);
    expect(askew.turn % 90).not.toBe(0);
  });

  /** Broken on purpose: no letter on the second part. Seen to fail. */
  test("edges that are sewn to one another carry the same letter on both parts, inside them, and no other edge has it", () => {
    const named = patternsOfText(whole, untriedKnit(usualStretch));
    if (!named.ok) throw new Error("no patterns");
    const own = named.value.parts.map(({ part }) => part);
    const names = seamNames(own);
    const edges = own.flatMap((part) => part.edges);
    for (const { id, sewnTo } of edges) {
      const name = names.get(id);
      expect(name === undefined, id).toBe(sewnTo === null);
      if (name === undefined) continue;
      expect(
        edges
          .filter((edge) => names.get(edge.id) === name)
          .map((edge) => edge.id)
          .sort(),
      ).toEqual([id, sewnTo].sort());
      expect(name.length).toBeLessThan(3);
    }
    expect(2 * new Set(names.values()).size).toBe(edges.filter(({ sewnTo }) => sewnTo !== null).length);
    expect(edges.filter(({ sewnTo }) => sewnTo !== null).length).toBeGreaterThanOrEqual(2 * (8 + 6));
    for (const part of own.filter(({ kind }) => kind === "cover")) {
      for (const isMirrored of [false, true]) {
        const { seams, lines } = thrownPart(part, { mmPerPixel: 0.5, turn: 30, isMirrored }, names);
        expect(seams.map(({ name }) => name)).toEqual(part.edges.flatMap(({ id }) => names.get(id) ?? []));
        for (const { at } of seams) expect(isInside(lines[0]?.points ?? [], at), part.id).toBe(true);
      }
    }
  });

  /** Broken on purpose: the word at the middle of the line, level. Seen to fail. */
  test("the word beside the grain line never crosses it, however short, steep or turned it is", () => {
    for (let turn = 0; turn < 360; turn += 15) {
      const angle = (turn * Math.PI) / 180;
      for (const length of [20, 60, 400]) {
        const line = [
          { x: 100, y: 100 },
          { x: 100 + length * Math.cos(angle), y: 100 + length * Math.sin(angle) },
        ] as const;
        const { x, y, turn: wordTurn } = wordBeside(line);
        expect(Math.abs(wordTurn)).toBeLessThanOrEqual(90);
        // The word's box, 24 px high, along its own direction: its corners lie on one side of the line, clear of its stroke.
        const way = (wordTurn * Math.PI) / 180;
        const corners = [-40, 40].flatMap((along) =>
          [-12, 12].map((up) => ({
            x: x + along * Math.cos(way) - up * Math.sin(way),
            y: y + along * Math.sin(way) + up * Math.cos(way),
          })),
        );
        const sides = corners.map((p) => -(p.x - 100) * Math.sin(angle) + (p.y - 100) * Math.cos(angle));
        expect(Math.min(...sides.map(Math.abs)), `${turn} ${length}`).toBeGreaterThan(5);
        expect(new Set(sides.map(Math.sign)).size).toBe(1);
      }
    }
  });

  test("a bar that reads long makes everything smaller, and a reading that cannot be is none", () => {
    const mmPerPixel = calibrated(0.25, 254, 508);
    expect(mmPerPixel).toBe(0.5);
    expect(254 / mmPerPixel).toBe(508);
    expect(calibrated(calibrated(0.3, 254, 250), 254, 254)).toBeCloseTo((0.3 * 250) / 254, 12);
    expect([0.01, 0.3, 1.5, 40].map(isThrow)).toEqual([false, true, true, false]);
  });
});
