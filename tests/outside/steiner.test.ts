import fc from "fast-check";
import "jsts/org/locationtech/jts/monkey.js";
import BufferOp from "jsts/org/locationtech/jts/operation/buffer/BufferOp.js";
import BufferParameters from "jsts/org/locationtech/jts/operation/buffer/BufferParameters.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import { describe, expect, test } from "vitest";
import type { Section } from "../../src/core/body/section";
import { sectionReading } from "../../src/core/body/sectionReading";
import { sectionOutline } from "../../src/core/geometry/outline";
import { paddedPoints, tapeQuarters } from "../../src/core/tape/tape";
import { mm, ratio } from "../../src/core/units";

/**
 * Steiner's formula: a layer of even thickness t all round any closed convex outline adds 2 pi t to it, and a layer over
 * a stretch that turns through an angle a adds a t (J. Steiner, Über parallele Flächen, 1840; from memory). Check values 1
 * to 4 of our table of trade facts: 6.2832 t, 3.1416 t, 7.96 mm for +50 mm all round, 15.92 mm over the front half.
 */
const half = fc.double({ min: 80, max: 240, noNaN: true });
const sections = fc
  .record({
    left: half,
    lean: fc.double({ min: -6, max: 6, noNaN: true }),
    front: half,
    back: half,
    exponent: fc.double({ min: 2, max: 5, noNaN: true }),
  })
  .map(
    ({ left, lean, front, back, exponent }): Section => ({
      leftBreadth: mm(left),
      rightBreadth: mm(left + lean),
      frontDepth: mm(front),
      backDepth: mm(back),
      frontExponent: ratio(exponent),
      backExponent: ratio(5 - exponent / 2),
    }),
  );

/** Points in each eighth of the outline: its chords miss a torso's girth by a few hundredths of a millimetre. */
const perPart = 120;

const tapeOver = (section: Section, thickness: (arcLength: number) => number) => {
  const outline = sectionOutline(section, perPart);
  const quarters = tapeQuarters(outline, outline.arcLength.map(thickness));
  const frontArc = quarters.leftFront + quarters.rightFront;
  return { frontArc, girth: frontArc + quarters.leftBack + quarters.rightBack, quarters };
};

describe("an even layer (Steiner)", () => {
  test("adds 2 pi t all round, pi t in front, pi t / 2 to each quarter, whatever the section", () => {
    fc.assert(
      fc.property(sections, fc.double({ min: 0, max: 80, noNaN: true }), (section, t) => {
        const bare = tapeOver(section, () => 0);
        const padded = tapeOver(section, () => t);
        const allowed = 0.1 + 0.001 * 2 * Math.PI * t;
        expect(Math.abs(padded.girth - bare.girth - 2 * Math.PI * t)).toBeLessThan(allowed);
        expect(Math.abs(padded.frontArc - bare.frontArc - Math.PI * t)).toBeLessThan(allowed);
        for (const quarter of ["leftFront", "rightFront", "leftBack", "rightBack"] as const) {
          expect(Math.abs(padded.quarters[quarter] - bare.quarters[quarter] - (Math.PI * t) / 2)).toBeLessThan(allowed);
        }
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test("7.96 mm all round adds 50 mm; 15.92 mm over the front half adds 50 mm in front (check values 3 and 4)", () => {
    const section: Section = {
      leftBreadth: mm(130),
      rightBreadth: mm(130),
      frontDepth: mm(110),
      backDepth: mm(90),
      frontExponent: ratio(2.46),
      backExponent: ratio(2.46),
    };
    const bare = tapeOver(section, () => 0);
    expect(Math.abs(tapeOver(section, () => 7.96).girth - bare.girth - 50)).toBeLessThan(0.1);
    const front = bare.quarters.leftFront;
    const overFront = tapeOver(section, (arcLength) => (Math.abs(arcLength) <= front + 0.01 ? 15.92 : 0));
    expect(Math.abs(overFront.frontArc - bare.frontArc - 50)).toBeLessThan(0.5);
    // The end effect: behind the side the tape runs straight from the blunt end to the bare back, and adds less than the step.
    expect(overFront.girth - overFront.frontArc - (bare.girth - bare.frontArc)).toBeLessThan(15.92);
  });
});

describe("the moved-out outline against the library's", () => {
  const factory = new GeometryFactory();
  const ringOf = (flat: Float64Array) => {
    const corners = Array.from({ length: flat.length / 2 }, (_, i) => new Coordinate(flat[2 * i], flat[2 * i + 1]));
    return factory.createPolygon(factory.createLinearRing([...corners, corners[0]]));
  };

  test("moved out evenly along the normals it is the library's buffer: same length, same area", () => {
    fc.assert(
      fc.property(sections, fc.double({ min: 1, max: 80, noNaN: true }), (section, t) => {
        const outline = sectionOutline(section, perPart);
        const bare = ringOf(paddedPoints(outline, new Float64Array(outline.count)));
        const moved = ringOf(paddedPoints(outline, new Float64Array(outline.count).fill(t)));
        const buffer = BufferOp.bufferOp(bare, t, new BufferParameters(32));
        expect(Math.abs(moved.getLength() - buffer.getLength())).toBeLessThan(0.001 * buffer.getLength());
        expect(Math.abs(moved.getArea() - buffer.getArea())).toBeLessThan(0.001 * buffer.getArea());
      }),
      { seed: 2, numRuns: 30 },
    );
  });

  test("the tape over uneven padding is the length of the library's hull, and the front arc the part before the sides", () => {
    fc.assert(
      fc.property(
        sections,
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.double({ min: -250, max: 250, noNaN: true }),
        (section, t, middle) => {
          const outline = sectionOutline(section, perPart);
          const hill = outline.arcLength.map((arcLength) => t * Math.max(0, 1 - Math.abs(arcLength - middle) / 120));
          const hullRing = ringOf(paddedPoints(outline, hill)).convexHull();
          const box = (y0: number, y1: number) => ringOf(Float64Array.from([-900, y0, 900, y0, 900, y1, -900, y1]));
          const inFront = hullRing.intersection(box(0, 900));
          const chord = hullRing.intersection(box(-1e-7, 1e-7)).getEnvelopeInternal().getWidth();
          const tape = tapeQuarters(outline, hill);
          const frontArc = tape.leftFront + tape.rightFront;
          expect(Math.abs(frontArc + tape.leftBack + tape.rightBack - hullRing.getLength())).toBeLessThan(0.01);
          expect(Math.abs(frontArc - (inFront.getLength() - chord))).toBeLessThan(0.05);
        },
      ),
      { seed: 3, numRuns: 60 },
    );
  });

  test("a bare section's own reading is the tape over nothing", () => {
    fc.assert(
      fc.property(sections, (section) => {
        const reading = sectionReading(section);
        const tape = tapeOver(section, () => 0);
        expect(Math.abs(tape.girth - reading.girth)).toBeLessThan(0.1);
        expect(Math.abs(tape.frontArc - reading.frontArc)).toBeLessThan(0.1);
      }),
      { seed: 4, numRuns: 100 },
    );
  });
});
