import fc from "fast-check";
import ConvexHull from "jsts/org/locationtech/jts/algorithm/ConvexHull.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import { describe, expect, test } from "vitest";
import { hull } from "../../src/core/geometry/hull";

/** The hull of the core against the hull of a general-purpose geometry library (jsts, a port of the JTS suite). */
type Spot = readonly [x: number, y: number];

const libraryHull = (spots: readonly Spot[]): { readonly length: number; readonly corners: readonly Spot[] } => {
  const geometry = new ConvexHull(
    spots.map(([x, y]) => new Coordinate(x, y)),
    new GeometryFactory(),
  ).getConvexHull();
  const ring: readonly Spot[] = geometry
    .getCoordinates()
    .map(({ x, y }: { readonly x: number; readonly y: number }): Spot => [x, y]);
  const isRing = geometry.getGeometryType() === "Polygon";
  return { length: geometry.getLength(), corners: isRing ? ring.slice(1) : ring };
};

const ours = (spots: readonly Spot[]): readonly Spot[] => {
  const flat = hull(Float64Array.from(spots.flat()));
  return Array.from({ length: flat.length / 2 }, (_, i): Spot => [flat[2 * i] as number, flat[2 * i + 1] as number]);
};

const closedLength = (spots: readonly Spot[]) =>
  spots.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = spots[(i + 1) % spots.length] as Spot;
    return sum + Math.hypot(nextX - x, nextY - y);
  }, 0);

const turn = ([ax, ay]: Spot, [bx, by]: Spot, [cx, cy]: Spot) => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
const sorted = (spots: readonly Spot[]) => [...spots].sort(([ax, ay], [bx, by]) => ax - bx || ay - by);

/** Micrometres on a torso: finer than any tape, coarse enough that no turn is a matter of rounding. */
const coordinate = fc.integer({ min: -300_000, max: 300_000 }).map((micrometres) => micrometres / 1000);
/** Whole numbers make coincident points and points on a line common. */
const gridCoordinate = fc.integer({ min: -6, max: 6 });

describe("convex hull against the library's", () => {
  test("same length and same corners for scattered points", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 60 }), (spots) => {
        const library = libraryHull(spots);
        expect(closedLength(ours(spots))).toBeCloseTo(
          library.corners.length > 2 ? library.length : 2 * library.length,
          6,
        );
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  test("exactly the same corners on a grid, coincident and aligned points included", () => {
    let flat = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(gridCoordinate, gridCoordinate), { minLength: 1, maxLength: 25 }), (spots) => {
        const library = libraryHull(spots);
        if (library.corners.length < 3) flat++;
        expect(sorted(ours(spots))).toEqual(sorted(library.corners));
      }),
      { seed: 1, numRuns: 500 },
    );
    expect(flat).toBeGreaterThan(5);
  });

  test("corners run anticlockwise and every point lies inside", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 60 }), (spots) => {
        const corners = ours(spots);
        corners.forEach((corner, i) => {
          const next = corners[(i + 1) % corners.length] as Spot;
          for (const spot of spots) expect(turn(corner, next, spot)).toBeGreaterThanOrEqual(-1e-6);
        });
      }),
      { seed: 5, numRuns: 100 },
    );
  });

  test("nothing, one point, the same point twice, a line", () => {
    expect(ours([])).toEqual([]);
    expect(ours([[3, 4]])).toEqual([[3, 4]]);
    expect(
      ours([
        [3, 4],
        [3, 4],
      ]),
    ).toEqual([[3, 4]]);
    expect(
      sorted(
        ours([
          [0, 0],
          [2, 2],
          [1, 1],
        ]),
      ),
    ).toEqual([
      [0, 0],
      [2, 2],
    ]);
  });
});
