import fc from "fast-check";
import ConvexHull from "jsts/org/locationtech/jts/algorithm/ConvexHull.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import { describe, expect, test } from "vitest";
import { sectionOutline } from "../../src/core/geometry/outline";
import { tautRing } from "../../src/core/geometry/tautRing";
import { paddedPoints } from "../../src/core/tape/tape";

/** What a tape touches against the convex hull of a general-purpose geometry library (jsts, a port of the JTS suite). */
type Spot = readonly [x: number, y: number];

const libraryHull = (spots: readonly Spot[]): readonly Spot[] => {
  const ring: readonly Spot[] = new ConvexHull(
    spots.map(([x, y]) => new Coordinate(x, y)),
    new GeometryFactory(),
  )
    .getConvexHull()
    .getCoordinates()
    .map(({ x, y }: { readonly x: number; readonly y: number }): Spot => [x, y]);
  return ring.slice(1);
};

const spotsOf = (flat: Float64Array): readonly Spot[] =>
  Array.from({ length: flat.length / 2 }, (_, i): Spot => [flat[2 * i] as number, flat[2 * i + 1] as number]);

const ours = (spots: readonly Spot[]): readonly Spot[] => spotsOf(tautRing(Float64Array.from(spots.flat())));

const closedLength = (spots: readonly Spot[]) =>
  spots.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = spots[(i + 1) % spots.length] as Spot;
    return sum + Math.hypot(nextX - x, nextY - y);
  }, 0);

const turn = ([ax, ay]: Spot, [bx, by]: Spot, [cx, cy]: Spot) => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
const sorted = (spots: readonly Spot[]) => [...spots].sort(([ax, ay], [bx, by]) => ax - bx || ay - by);

/** Millimetres out from the outline, with nothing beside a lot as often as not: steeper steps than any batting makes. */
const thickness = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 250, noNaN: true }));

const sections = fc.record({
  leftBreadth: fc.double({ min: 80, max: 260, noNaN: true }),
  rightBreadth: fc.double({ min: 80, max: 260, noNaN: true }),
  frontDepth: fc.double({ min: 20, max: 220, noNaN: true }),
  backDepth: fc.double({ min: 20, max: 220, noNaN: true }),
  frontExponent: fc.double({ min: 1.6, max: 3, noNaN: true }),
  backExponent: fc.double({ min: 1.6, max: 3, noNaN: true }),
});

const paddedRings = fc
  .tuple(sections, fc.array(thickness, { minLength: 32, maxLength: 32 }))
  .map(([section, out]) => spotsOf(paddedPoints(sectionOutline(section, 4), Float64Array.from(out))));

/** Points on the four sides of a square, moved straight out by whole numbers: coincident points and points on a line are common. */
const squareRings = fc.array(fc.nat(4), { minLength: 24, maxLength: 24 }).map((out) =>
  Array.from({ length: 24 }, (_, i): Spot => {
    const [along, away] = [i % 6, out[i] as number];
    const side = Math.floor(i / 6);
    if (side === 0) return [5 - along, 0 - away];
    if (side === 1) return [0 - away, along];
    if (side === 2) return [along, 5 + away];
    return [5 + away, 5 - along];
  }),
);

describe("what a taut tape touches, against the library's hull", () => {
  test("same length and same corners round a section padded by any amounts", () => {
    let bridged = 0;
    fc.assert(
      fc.property(paddedRings, (spots) => {
        const library = libraryHull(spots);
        if (library.length < spots.length / 2) bridged++;
        expect(closedLength(ours(spots))).toBeCloseTo(closedLength(library), 6);
      }),
      { seed: 1, numRuns: 400 },
    );
    expect(bridged).toBeGreaterThan(100);
  });

  test("exactly the same corners round a square, coincident and aligned points included", () => {
    fc.assert(
      fc.property(squareRings, (spots) => {
        expect(sorted(ours(spots))).toEqual(sorted(libraryHull(spots)));
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  test("corners run clockwise and every point lies inside", () => {
    fc.assert(
      fc.property(paddedRings, (spots) => {
        const corners = ours(spots);
        corners.forEach((corner, i) => {
          const next = corners[(i + 1) % corners.length] as Spot;
          for (const spot of spots) expect(turn(corner, next, spot)).toBeLessThanOrEqual(1e-6);
        });
      }),
      { seed: 5, numRuns: 100 },
    );
  });
});
