import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reachOf } from "../../src/core/geometry/support";
import type { Section } from "../../src/core/body/section";
import { plannedExample } from "../gallery/plannedExample";
import {
  facesToward,
  frontView,
  type Look,
  lookFrom,
  seenRing,
  standing,
  type StandingRing,
  turned,
  turningSections,
  wrapped,
} from "../../src/ui/pages/view3d/turningSurface";
import { turningModel } from "../../src/ui/pages/view3d/turningModel";
import { pieceEdges } from "../../src/ui/pages/view3d/pieceEdges";
import { mm, ratio } from "../../src/core/units";

const { levels, pieces } = plannedExample;
const model = turningModel(levels, pieces);
const oneMillimetre = 1;

describe("turning", () => {
  test("a whole turn is no turn, any number of times", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), fc.integer({ min: -5, max: 5 }), (degrees, turns) => {
        expect(wrapped(degrees + 360 * turns)).toBe(degrees);
        const [one, other] = [
          { turn: degrees, tip: 10 },
          { turn: degrees + 360 * turns, tip: 10 },
        ].map(lookFrom);
        expect(other?.(120, 80, 300)).toEqual(one?.(120, 80, 300));
      }),
    );
    let view = frontView;
    for (let i = 0; i < 24; i++) view = turned(view, 15);
    expect(view).toEqual(frontView);
  });

  test("a mirrored figure turned the other way is the mirrored picture", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -300, max: 300, noNaN: true }),
        fc.double({ min: -300, max: 300, noNaN: true }),
        fc.integer({ min: -180, max: 180 }),
        fc.integer({ min: -20, max: 50 }),
        (x, y, turn, tip) => {
          const seen = lookFrom({ turn, tip })(x, y, 200);
          const mirrored = lookFrom({ turn: -turn, tip })(-x, y, 200);
          expect(mirrored.across).toBeCloseTo(-seen.across, 6);
          expect(mirrored.down).toBeCloseTo(seen.down, 6);
          expect(mirrored.near).toBeCloseTo(seen.near, 6);
        },
      ),
    );
  });

  test("her left is on the right of the page from the front, and nearest from her left side", () => {
    const left = [150, 0, 300] as const;
    expect(lookFrom({ turn: 0, tip: 0 })(...left).across).toBeCloseTo(150);
    expect(lookFrom({ turn: 180, tip: 0 })(...left).across).toBeCloseTo(-150);
    expect(lookFrom({ turn: 90, tip: 0 })(...left).near).toBeCloseTo(150);
    expect(lookFrom({ turn: 0, tip: 0 })(0, 100, 300).near).toBeCloseTo(100);
  });

  test("it is tipped no further than it has something to say", () => {
    expect(turned(frontView, 0, 500).tip).toBeLessThan(90);
    expect(turned(frontView, 0, -500).tip).toBeGreaterThan(-90);
  });
});

describe("the silhouette", () => {
  const bare = standing(model.form, 0);
  const ringAt = (rings: typeof bare, depthBelowNape: number) => {
    const ring = rings.find((item) => item.section.depthBelowNape === depthBelowNape);
    if (ring === undefined) throw new Error(`no ring stands on the level at ${String(depthBelowNape)}`);
    return ring;
  };
  const breadth = (section: Section) => reachOf(section).left + reachOf(section).right;
  const depth = (section: Section) => reachOf(section).front + reachOf(section).back;

  test.each(levels.map((level) => [level.name, level] as const))("is as broad as the section at the %s", (_, level) => {
    for (const tip of [-20, 0, 12, 50]) {
      for (const turn of [0, 180]) {
        const look = lookFrom({ turn, tip });
        expect(
          Math.abs(seenBreadth(ringAt(bare, level.depthBelowNape.value), look) - breadth(level.formSection)),
        ).toBeLessThan(oneMillimetre);
        expect(
          Math.abs(seenBreadth(ringAt(model.body, level.depthBelowNape.value), look) - breadth(level.bodySection)),
        ).toBeLessThan(oneMillimetre);
      }
      const side = lookFrom({ turn: 90, tip });
      expect(
        Math.abs(seenBreadth(ringAt(bare, level.depthBelowNape.value), side) - depth(level.formSection)),
      ).toBeLessThan(oneMillimetre);
      expect(
        Math.abs(seenBreadth(ringAt(model.body, level.depthBelowNape.value), side) - depth(level.bodySection)),
      ).toBeLessThan(oneMillimetre);
    }
  });

  test("never shrinks when a piece goes on, and grows somewhere with every piece", () => {
    const broad = (count: number) =>
      standing(model.form, count).map((ring) =>
        [0, 30, 60, 90, 120, 150].map((turn) => seenBreadth(ring, lookFrom({ turn, tip: 0 }))),
      );
    let before = broad(0);
    for (let count = 1; count <= pieces.length; count++) {
      const after = broad(count);
      const gains = after.flatMap((ring, i) => ring.map((value, j) => value - (before[i]?.[j] ?? 0)));
      expect(Math.min(...gains)).toBeGreaterThan(-1e-9);
      expect(Math.max(...gains)).toBeGreaterThan(0);
      before = after;
    }
    expect(pieces.length).toBeGreaterThan(3);
  });
});

describe("faces", () => {
  const round: Section = {
    leftBreadth: mm(100),
    rightBreadth: mm(100),
    frontDepth: mm(100),
    backDepth: mm(100),
    frontExponent: ratio(2),
    backExponent: ratio(2),
  };
  const column = standing(
    turningSections(() => round, [], { top: 0, bottom: 18 }),
    0,
  );

  test("half of a round column faces the viewer, the nearest last, the middle lit from in front", () => {
    for (const turn of [0, 45, 130, 275]) {
      const faces = facesToward(column, lookFrom({ turn, tip: 0 }));
      expect(faces).toHaveLength(72);
      const near = faces.map((face) => face.near);
      expect(near).toEqual(near.toSorted((a, b) => a - b));
      expect(Math.min(...near)).toBeGreaterThan(0);
      expect(faces.every(({ light }) => light >= 0 && light <= 1)).toBe(true);
      const [left, right] = [-1, 1].map((side) =>
        Math.max(...faces.filter(({ corners }) => corners[0].across * side > 60).map(({ light }) => light)),
      );
      expect(left).toBeGreaterThan(right ?? 1);
    }
  });

  test("no rings, one ring and a ring without extent give no faces", () => {
    const look = lookFrom(frontView);
    const nothing = { ...round, leftBreadth: mm(0), rightBreadth: mm(0), frontDepth: mm(0), backDepth: mm(0) };
    expect(facesToward([], look)).toEqual([]);
    expect(facesToward(column.slice(0, 1), look)).toEqual([]);
    expect(
      facesToward(
        standing(
          turningSections(() => nothing, [], { top: 0, bottom: 9 }),
          0,
        ),
        look,
      ),
    ).toEqual([]);
  });
});

test("a piece in front is seen from the front and hidden from the back", () => {
  // A wide piece ends where the surface turns to the side already; a tuning layer does not.
  const front = pieces.find(({ zone, kind }) => zone === "front" && kind === "tuning");
  if (front === undefined) throw new Error("no front piece");
  const rings = standing(model.form, pieces.length);
  const runs = (turn: number) => pieceEdges(front, model.bareAt, rings, lookFrom({ turn, tip: 0 })).flat();
  expect(runs(0).length).toBeGreaterThan(10);
  expect(runs(180).length).toBeLessThan(runs(0).length / 2);
});

/** How broad a ring looks on the page (mm). */
function seenBreadth(ring: StandingRing, look: Look): number {
  const across = seenRing(ring, look).map((point) => point.across);
  return Math.max(...across) - Math.min(...across);
}
