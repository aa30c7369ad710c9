import ConvexHull from "jsts/org/locationtech/jts/algorithm/ConvexHull.js";
import IsValidOp from "jsts/org/locationtech/jts/operation/valid/IsValidOp.js";
import { describe, expect, test } from "vitest";
import type { TracedSection } from "../../src/core/body/section";
import { girthOf } from "../../src/core/geometry/outline";
import type { Anchor } from "../../src/core/padding/layer";
import type { Laid } from "../../src/core/padding/layerThickness";
import { tautQuarters } from "../../src/core/surface/paddedSection";
import { paddedSurface } from "../../src/core/surface/paddedSurface";
import { mm } from "../../src/core/units";
import { shellOf } from "../core/surface/surfaces";
import { scenarios } from "../tools/trueScenarios";
import type { TrueShape } from "../tools/trueShapes";
import { type LaidPlan, readOver } from "../tools/trueTape";
import { planOfGiven, truePairs } from "../tools/trueTrials";

/**
 * The core's surface of pieces laid on forms that nobody here drew, against the outside reckoning of the same plan file on the
 * same slices, which shares no code with it: at the lines and between them.
 */
const directions = 360;
const pointsPerEighth = 150;

/** A true hull as the core knows sections: its support from the middle of the side seams. */
const sectionAt =
  (shape: TrueShape) =>
  (depth: number): TracedSection => {
    const { ring, seams } = shape.sectionAt(depth);
    const seam = (seams[0] + seams[1]) / 2;
    const support = Array.from({ length: directions }, (_, i) => {
      const [c, s] = [Math.cos((2 * Math.PI * i) / directions), Math.sin((2 * Math.PI * i) / directions)];
      return Math.max(...ring.map(({ x, y }) => x * c + (y - seam) * s));
    });
    return { support };
  };

const laidPieces = (plan: LaidPlan): readonly Laid[] =>
  plan.pieces.map(({ anchor, layers }) => ({
    anchor: anchor as Anchor,
    layers: layers.map(({ thicknessMm, featherMm, wrap, rows }) => ({
      batting: "building",
      thickness: mm(thicknessMm),
      feather: mm(featherMm),
      wrap,
      rows: rows.map((row) => ({
        depthBelowNape: mm(row.depthBelowNapeMm),
        start: mm(row.startMm),
        end: mm(row.endMm),
      })),
    })),
  }));

const given = scenarios.find(({ id }) => id === "linesAndBreadths")?.given;
const cases = truePairs
  .filter((_, i) => i % 3 === 0)
  .map((pair) => {
    const plan = planOfGiven(given?.(pair) ?? { body: {}, form: {} });
    const surface = paddedSurface(sectionAt(pair.form), laidPieces(plan), pointsPerEighth);
    const [top, bottom] = [pair.body.levels.bust.depthBelowNape, pair.body.levels.fullHip.depthBelowNape];
    return { pair, plan, surface, depths: Array.from({ length: 12 }, (_, i) => top + ((bottom - top) * i) / 11) };
  });

describe("the surface over true slices", () => {
  /**
   * Broken on purpose: a piece from center back laid from center front; the feather twice as long. Seen to fail before
   * corners were scanned without points that rounding puts beside one another: up to 10 mm off.
   */
  test("reads what the outside reckoning reads, girth and front, on the lines and between them", () => {
    const misses = cases.flatMap(({ pair, plan, surface, depths }) =>
      depths.map((depth) => {
        const quarters = tautQuarters(surface.at(depth));
        const outside = readOver(plan, pair.form, depth);
        return {
          girth: Math.abs(girthOf(quarters) - outside.girth),
          front: Math.abs(quarters.leftFront + quarters.rightFront - outside.front),
        };
      }),
    );
    expect(misses.length).toBeGreaterThan(100);
    expect(Math.max(...misses.map(({ girth }) => girth))).toBeLessThan(0.6);
    expect(Math.max(...misses.map(({ front }) => front))).toBeLessThan(0.6);
  });

  /** Seen to fail before the normals of a traced curve were its own: neighbors met outside it. */
  test("closes and does not cross itself, corners and all, and the tape is the library's hull", () => {
    for (const { pair, surface, depths } of cases) {
      for (const depth of depths) {
        const section = surface.at(depth);
        const shell = shellOf(section.points);
        expect(new IsValidOp(shell).isValid(), `${pair.body.id} ${String(depth)}`).toBe(true);
        const hull: number = new ConvexHull(shell).getConvexHull().getLength();
        expect(Math.abs(girthOf(tautQuarters(section)) - hull), `${pair.body.id} ${String(depth)}`).toBeLessThan(1e-3);
      }
    }
  });
});
