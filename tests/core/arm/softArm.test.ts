import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import type { ArmholePlate } from "../../../src/core/arm/armCap";
import { armAllowance } from "../../../src/core/arm/armParts";
import { type ArmReadings, armReading } from "../../../src/core/arm/armReadings";
import { aroundOval, oval } from "../../../src/core/arm/oval";
import { type ArmWish, softArm, type SoftArm, usualArm } from "../../../src/core/arm/softArm";
import { measurementFacts } from "../../../src/core/body/measurementFacts";
import { lineLength, partOutline, type PatternPart } from "../../../src/core/pattern/patternPart";
import { mm } from "../../../src/core/units";
import {
  armOf,
  areaOf,
  chordAt,
  edgeOf,
  ellipse,
  isSimple,
  knit,
  lengthOf,
  madeUpArm,
  partOf,
  partsOf,
  woven,
} from "./arms";

const people = Array.from({ length: 200 }, (_, i) => madeUpArm(i + 1));
const twoPieces = { ...usualArm, cut: "twoPieces" } as const;
const onePiece = { ...usualArm, cut: "onePiece" } as const;

/** Many outlines to a test, and other work may share the machine. */
vi.setConfig({ testTimeout: 120_000 });

/** Every made-up arm, in woven cloth and in knit by turns. */
const arms = (wish: ArmWish): readonly { readonly at: string; readonly arm: SoftArm }[] =>
  people.map((readings, i) => {
    const cloth = i % 2 === 0 ? woven : knit;
    return { at: `${i + 1} ${cloth.kind}`, arm: softArm(readings, cloth, wish) };
  });

/** An armhole of a form, as high and three quarters as wide. */
const plateOf = (height: number | null): ArmholePlate =>
  height === null ? usualArm.plate : { height: mm(height), breadth: mm(0.75 * height) };

/** Across and along, how many times longer the cloth becomes in use. */
const pulled = ({ cloth }: SoftArm) =>
  cloth.kind === "knit" ? { across: 1 + cloth.stretch, along: 1 - cloth.shortening } : { across: 1, along: 1 };

/** The drawn bend: 2/π of 18 degrees. */
const drawnBend = ((2 / Math.PI) * 18 * Math.PI) / 180;

/** In which direction of the page the front of the arm lies on each piece of a left arm. */
const frontOf = { upper: -1, under: 1 } as const;

describe("two pieces of an arm, laid flat", () => {
  const cases = arms(twoPieces);

  /** Broken on purpose: half a girth on each piece taken from the middle as 0.26 of it; the elbow line drawn level; the knit not drawn in. Seen to fail. */
  test("read on the drawing, upper arm, elbow and wrist are the body's within 0.05 mm, the cloth pulled on", () => {
    for (const { at, arm } of cases) {
      const { across } = pulled(arm);
      for (const name of ["upper", "under"] as const) {
        const part = partOf(arm, name);
        const front = frontOf[name];
        const read = (y: number, angle: number) => 2 * across * chordAt(part, { x: 0, y }, angle).length;
        const armpit = -arm.capHeight - 0.01;
        for (const y of [armpit, (armpit - arm.upper) / 2])
          expect(Math.abs(read(y, 0) - arm.girths.upperArm), at).toBeLessThan(0.05);
        expect(Math.abs(read(-arm.upper, (front * drawnBend) / 2) - arm.girths.elbow), at).toBeLessThan(0.05);
        const wrist = lengthOf(edgeOf(part, "wrist").points);
        expect(Math.abs(2 * across * wrist - arm.girths.wrist), at).toBeLessThan(0.05);
        expect(part.levels.map((level) => Math.round(200 * across * level.length) / 100)).toEqual(
          Object.values(arm.girths).map((girth) => Math.round(100 * girth) / 100),
        );
      }
    }
  });

  /** Broken on purpose: the lower arm not turned; the whole arm's length below the elbow. Seen to fail. */
  test("the middle of the arm is as long as it was measured, and bends forward at the elbow", () => {
    for (const [i, { at, arm }] of cases.entries()) {
      const readings = people[i] as (typeof people)[number];
      const { along } = pulled(arm);
      for (const name of ["upper", "under"] as const) {
        const part = partOf(arm, name);
        const front = frontOf[name];
        const elbow = chordAt(part, { x: 0, y: -readings.shoulderToElbow / along }, (front * drawnBend) / 2).middle;
        expect(Math.hypot(elbow.x, elbow.y * along + readings.shoulderToElbow), at).toBeLessThan(0.01);
        const [from, to] = edgeOf(part, "wrist").points as unknown as Pair;
        const wrist = { x: (from.x + to.x) / 2 - elbow.x, y: (from.y + to.y) / 2 - elbow.y };
        expect(
          Math.abs(along * Math.hypot(wrist.x, wrist.y) - (readings.armLength - readings.shoulderToElbow)),
          at,
        ).toBeLessThan(0.01);
        expect(Math.atan2(front * wrist.x, -wrist.y), at).toBeCloseTo(drawnBend, 6);
      }
      const top = Math.max(...partOutline(partOf(arm, "upper")).map(({ y }) => y));
      expect(Math.abs(top), at).toBeLessThan(1e-9);
    }
  });

  /** Broken on purpose: the oval as high as the plate less the cap; the knit not drawn in. Seen to fail. */
  test("both caps together are as long as the oval's edge by the elliptic integral, within 0.1 mm, and lie on it half and half", () => {
    for (const { at, arm } of cases) {
      const caps = (["upper", "under"] as const).map((name) => lengthOf(edgeOf(partOf(arm, name), "cap").points));
      const { breadth, height } = arm.capDisc;
      const drawn = (caps[0] as number) + (caps[1] as number);
      expect(Math.abs(drawn - ellipse(breadth, height)), at).toBeLessThan(0.1);
      expect(Math.abs(lengthOf(edgeOf(partOf(arm, "capDisc"), "upper").points) - (caps[0] as number)), at).toBeLessThan(
        0.1,
      );
    }
  });

  /** Broken on purpose: the under piece's cap rising as the upper one's does. Seen to fail. */
  test("rolled into a tube, both caps lie in one plane, the shoulder point a cap's height above the armpit", () => {
    for (const { at, arm } of cases) {
      const { capHeight, cutGirths } = arm;
      const radius = cutGirths.upperArm / (2 * Math.PI);
      for (const name of ["upper", "under"] as const) {
        for (const { x, y } of edgeOf(partOf(arm, name), "cap").points) {
          const outward = (name === "upper" ? 1 : -1) * radius * Math.cos(x / radius);
          expect(Math.abs(y + capHeight / 2 - (outward * capHeight) / (2 * radius)), at).toBeLessThan(1e-6);
        }
      }
    }
  });

  /** Broken on purpose: the elbow line drawn level. Seen to fail. */
  test("no edge runs beyond the lines on both sides of it: between two lines no width is beyond both", () => {
    for (const { at, arm } of cases.filter((_, i) => i % 3 === 0)) {
      const part = partOf(arm, "upper");
      const { upper, capHeight, cutGirths } = arm;
      for (let share = 0.1; share < 1; share += 0.1) {
        const y = -(capHeight + upper) / 2 + share * ((capHeight - upper) / 2);
        const bend = (share * drawnBend) / 2;
        const { length } = chordAt(part, { x: 0, y }, -bend);
        expect(length, at).toBeLessThan(Math.max(cutGirths.upperArm, cutGirths.elbow) / 2 + 1.5);
        expect(length, at).toBeGreaterThan(Math.min(cutGirths.upperArm, cutGirths.elbow) / 2 - 1.5);
      }
    }
  });
});

describe.each([twoPieces, onePiece])("an arm of $cut", (wish) => {
  const cases = arms(wish);
  const parts = cases.flatMap(({ at, arm }) => partsOf(arm).map(({ part }) => ({ at: `${at} ${part.id}`, arm, part })));

  /** Broken on purpose: one edge of a front seam moved by a millimeter; a seam that names the wrong edge. Seen to fail. */
  test("the edges of every seam name each other and are equal within 0.1 mm", () => {
    for (const { at, arm } of cases) {
      const edges = partsOf(arm).flatMap(({ part }) => part.edges);
      expect(new Set(edges.map(({ id }) => id)).size).toBe(edges.length);
      const sewn = edges.filter(({ sewnTo }) => sewnTo !== null);
      expect(sewn.length).toBe(wish.cut === "twoPieces" ? 12 : 10);
      for (const { id, sewnTo, points } of sewn) {
        const other = edges.find((edge) => edge.id === sewnTo);
        expect(other?.sewnTo, id).toBe(id);
        expect(Math.abs(lineLength(points) - lineLength(other?.points ?? [])), `${at} ${id}`).toBeLessThan(0.1);
      }
    }
  });

  test("outlines run counterclockwise, edge after edge, and none crosses itself; no more does a cutting line", () => {
    for (const { at, part } of parts) {
      const outline = partOutline(part);
      for (const [i, { points }] of part.edges.entries())
        expect(points.at(-1), at).toEqual(
          (part.edges[(i + 1) % part.edges.length] as (typeof part.edges)[number]).points[0],
        );
      expect(isSimple(outline), at).toBe(true);
      expect(signedArea(outline), at).toBeGreaterThan(0);
      for (const cut of cutOf(part)) {
        expect(isSimple(cut.slice(0, -1)), at).toBe(true);
        expect(areaOf(cut.slice(0, -1)) - areaOf(outline), at).toBeGreaterThan(0.9 * armAllowance * lengthOf(outline));
      }
    }
  });

  /** Broken on purpose: the allowance moved inward. Seen to fail. */
  test("the cutting line runs an allowance outside the sewing line: never nearer, and farther only at a corner", () => {
    for (const { at, part } of parts.filter((_, i) => i % 7 === 0)) {
      const outline = partOutline(part);
      for (const cut of cutOf(part)) {
        const away = cut.map((point) => Math.min(...pairs(outline).map((pair) => distance(point, pair))));
        expect(Math.min(...away), at).toBeGreaterThan(armAllowance - 0.3);
        expect(Math.max(...away), at).toBeLessThan(2.2 * armAllowance);
      }
    }
  });

  /** Broken on purpose: the card for the cap as wide as the knit is cut. Seen to fail. */
  test("notches lie on the outline; what a card closes is of the body's size", () => {
    for (const { at, part, arm } of parts.filter((_, i) => i % 5 === 0)) {
      const outline = partOutline(part);
      for (const notch of part.notches)
        expect(Math.min(...pairs(outline).map((pair) => distance(notch, pair))), at).toBeLessThan(0.2);
      expect(new Set(part.notches.map(({ x, y }) => `${x} ${y}`)).size, at).toBe(part.notches.length);
      if (part.id.endsWith("wristCard"))
        expect(Math.abs(lengthOf([...outline, outline[0] as never]) - arm.girths.wrist), at).toBeLessThan(0.1);
      if (part.id.endsWith("wristDisc"))
        expect(
          Math.abs(pulled(arm).across * lengthOf([...outline, outline[0] as never]) - arm.girths.wrist),
          at,
        ).toBeLessThan(0.1);
      if (part.id.endsWith("capCard")) {
        const { breadth, height } = arm.capCard;
        expect(Math.abs(lengthOf([...outline, outline[0] as never]) - ellipse(breadth, height)), at).toBeLessThan(0.1);
        expect(Math.PI * breadth).toBeCloseTo(arm.girths.upperArm, 6);
      }
    }
  });

  /** Broken on purpose: the under piece of the right arm not turned. Seen to fail. */
  test("the right arm is the left one in the mirror", () => {
    for (const readings of people) {
      const [left, right] = (["left", "right"] as const).map((side) =>
        partsOf(softArm(readings, knit, { ...wish, side })),
      );
      expect(right?.length).toBe(left?.length);
      for (const [i, { name, part }] of (left ?? []).entries()) {
        const other = right?.[i]?.part as PatternPart;
        const own = (id: string) => id.replace("leftArm", "rightArm");
        expect(other.id).toBe(own(part.id));
        // A rectangle is its own mirror image wherever it lies.
        if (name === "tab") continue;
        for (const { id, points } of part.edges) {
          const mirrored = other.edges.find((edge) => edge.id === own(id))?.points.toReversed();
          expect(mirrored?.map(({ x, y }) => [near(-x), near(y)])).toEqual(
            points.map(({ x, y }) => [near(x), near(y)]),
          );
        }
      }
    }
  });

  /** Broken on purpose: the dip of the under cap as narrow as the plate makes it. Seen to fail. */
  test("whatever a tape may read of an arm without contradiction, no outline crosses itself", () => {
    const { upperArmGirth, elbowGirth, wristGirth, armLength } = measurementFacts;
    const between = ({ possible: { least, most } }: { possible: { least: number; most: number } }) =>
      fc.double({ min: least, max: most, noNaN: true });
    let met = 0;
    fc.assert(
      fc.property(
        between(upperArmGirth),
        between(elbowGirth),
        between(wristGirth),
        between(armLength),
        fc.double({ min: 0.46, max: 0.66, noNaN: true }),
        fc.constantFrom(null, 60, 130, 260),
        fc.constantFrom("ownOval", "gathered"),
        (upperArm, elbow, wrist, length, share, plate, cap) => {
          if (share * length < measurementFacts.shoulderToElbow.possible.least) return;
          const read = armReading(armOf([upperArm, elbow, wrist], share * length, (1 - share) * length));
          if (read.kind !== "whole") return;
          met++;
          const arm = softArm(read.readings, knit, { ...wish, cap, plate: plateOf(plate) });
          for (const { part } of partsOf(arm)) {
            expect(isSimple(partOutline(part))).toBe(true);
            for (const cut of cutOf(part)) expect(isSimple(cut.slice(0, -1))).toBe(true);
          }
        },
      ),
      { seed: 17, numRuns: 700, endOnFailure: true },
    );
    expect(met).toBeGreaterThan(100);
  });
});

describe("an arm of one piece", () => {
  /** Broken on purpose: the dart as deep at the back; the length of the arm along the back line. Seen to fail. */
  test("along both sides, halfway between front and back, it is as long above and below the dart as the arm was measured", () => {
    for (const { at, arm } of arms(onePiece)) {
      const part = partOf(arm, "whole");
      const bottom = Math.min(...partOutline(part).map(({ y }) => y));
      const darts = part.lines.filter(({ kind }) => kind === "dart");
      expect(darts).toHaveLength(2);
      for (const { points } of darts) {
        const half = (points.length - 1) / 2;
        const [upperLeg, lowerLeg] = [points.slice(0, half + 1), points.slice(half).toReversed()];
        expect(Math.abs(lengthOf(upperLeg) - lengthOf(lowerLeg)), at).toBeLessThan(0.001);
        expect(points[half]?.x, at).toBeCloseTo(0, 9);
        const side = (leg: typeof points) => crossing(leg, Math.sign(points[0]?.x ?? 0) * (arm.cutGirths.elbow / 4));
        expect(-side(upperLeg), at).toBeCloseTo(arm.upper, 1);
        expect(side(lowerLeg) - bottom, at).toBeCloseTo(arm.lower, 1);
        for (const end of [points[0], points.at(-1)]) {
          expect(Math.abs(end?.x ?? 0), at).toBeCloseTo(arm.cutGirths.elbow / 2, 6);
          expect(Math.min(...pairs(partOutline(part)).map((pair) => distance(end as never, pair))), at).toBeLessThan(
            0.01,
          );
        }
      }
      const across = (y: number) => pulled(arm).across * chordAt(part, { x: 0, y }, 0).length;
      expect(Math.abs(across(-arm.capHeight - 0.01) - arm.girths.upperArm), at).toBeLessThan(0.05);
      expect(Math.abs(across(bottom + 1e-6) - arm.girths.wrist), at).toBeLessThan(0.05);
    }
  });
});

/**
 * prototype figures: three arms worked by another program from the same description, on true plates of 125, 135 and 150 mm. Cap
 * height, oval, its edge, the seams along the front and the back, and the mouth of the dart of the arm of one piece. Broken on
 * purpose: the bend of two pieces drawn whole; legs of the dart by the sine. Seen to fail.
 */
describe("the prototype's three arms", () => {
  test.each([
    [armOf([260, 230, 148], 290, 225), 125, [94, 83, 125, 329.7], [458, 482], 23],
    [armOf([327, 275, 155], 311, 241), 135, [86, 104, 135, 377.1], [498, 526], 28],
    [armOf([400, 325, 170], 318, 248), 150, [79, 127, 150, 436.3], [515, 548], 33],
  ])("%#", (readings, plate, [cap, breadth, height, edge], seams, mouth) => {
    const arm = softArm(readings, woven, { ...twoPieces, plate: plateOf(plate) });
    expect(Math.round(arm.capHeight)).toBe(cap);
    expect([arm.capDisc.breadth, arm.capDisc.height].map(Math.round)).toEqual([breadth, height]);
    const upper = partOf(arm, "upper");
    expect(2 * lengthOf(edgeOf(upper, "cap").points)).toBeCloseTo(edge as number, 0);
    expect(Math.abs(2 * lengthOf(edgeOf(upper, "cap").points) - (edge as number))).toBeLessThan(0.15);
    const drawn = ["front", "back"].map((name) => lengthOf(edgeOf(upper, name).points));
    for (const [i, seam] of seams.entries()) expect(Math.abs((drawn[i] as number) - seam)).toBeLessThan(1);
    const whole = partOf(softArm(readings, woven, { ...onePiece, plate: plateOf(plate) }), "whole");
    const dart = whole.lines.find(({ kind }) => kind === "dart")?.points ?? [];
    expect(Math.round((dart[0]?.y ?? 0) - (dart.at(-1)?.y ?? 0))).toBe(mouth);
  });
});

/**
 * prototype figures: the arm of the middle on two plates, worked by another program from the same description. Broken on purpose: no
 * ease. Seen to fail.
 */
describe("a cap that is gathered onto the form's armhole", () => {
  const middle = armOf([327, 275, 155], 311, 241);
  const gathered = (
    readings: ArmReadings,
    height: number | null,
    breadth: number | null,
    more: Partial<ArmWish> = {},
  ) =>
    softArm(readings, more.side === "right" ? knit : woven, {
      ...twoPieces,
      ...more,
      cap: "gathered",
      plate: { height: height === null ? null : mm(height), breadth: breadth === null ? null : mm(breadth) },
    });

  test.each([
    [120, 95, 64],
    [135, 105, 104],
  ])("on a plate of %d by %d mm it is %d mm high", (height, breadth, cap) => {
    expect(Math.round(gathered(middle, height, breadth).capHeight)).toBe(cap);
  });

  /** Broken on purpose: the disc of a knit as large as the plate; no ease. Seen to fail. */
  test.each([twoPieces, onePiece])(
    "each half is 5 % longer than its half of the disc, woven and knit, and the card is the plate: $cut",
    (wish) => {
      let met = 0;
      for (const [i, readings] of people.entries()) {
        const arm = softArm(readings, i % 2 === 0 ? woven : knit, {
          ...wish,
          cap: "gathered",
          plate: { height: mm(135), breadth: mm(105) },
        });
        if (arm.capRefused !== null) continue;
        met++;
        expect(arm.capCard).toEqual({ breadth: 105, height: 135 });
        expect(arm.capDisc.height / arm.capDisc.breadth).toBeCloseTo(135 / 105, 9);
        const whole = partsOf(arm).some(({ name }) => name === "whole");
        for (const half of ["upper", "under"] as const) {
          const cap = whole ? edgeOf(partOf(arm, "whole"), `${half}Cap`) : edgeOf(partOf(arm, half), "cap");
          const disc = edgeOf(partOf(arm, "capDisc"), half);
          expect(disc.sewnTo).toBe(cap.id);
          expect(lengthOf(cap.points) / lengthOf(disc.points), String(i)).toBeCloseTo(1.05, 3);
        }
        if (i % 2 === 0) expect(ellipse(arm.capDisc.breadth, arm.capDisc.height)).toBeCloseTo(ellipse(105, 135), 6);
        else expect(arm.capDisc.breadth / 105, "smaller than its card").toBeLessThan(0.99);
      }
      expect(met).toBeGreaterThan(100);
    },
  );

  /** Broken on purpose: a cap without a height where the plate is small. Seen to fail. */
  test("where it cannot be had the arm has its own oval, and why is known", () => {
    const full = armOf([400, 325, 170], 318, 248);
    const own = softArm(full, woven, { ...twoPieces, plate: plateOf(120) });
    expect(own.capRefused).toBeNull();
    const small = gathered(full, 120, 90);
    expect([small.capRefused, small.capEase, small.capDisc]).toEqual(["plateSmall", 0, own.capDisc]);
    expect(gathered(middle, 290, 240).capRefused).toBe("plateLarge");
    expect(gathered(middle, 135, null).capRefused).toBe("plateUnread");
    expect(gathered(middle, null, 105).capRefused).toBe("plateUnread");
    expect(gathered(middle, null, 105).capDisc).toEqual(softArm(middle, woven, twoPieces).capDisc);
  });
});

/** Broken on purpose: one step of the mean left out. Seen to fail. */
test("around an oval it is as far as the elliptic integral says", () => {
  for (const [breadth, height] of [
    [100, 100],
    [95, 120],
    [120, 95],
    [20, 300],
  ] as const)
    expect(aroundOval(oval(breadth, height))).toBeCloseTo(ellipse(breadth, height), 6);
});

test("a plate that nobody measured is taken to be 130 mm high, a small one is raised to 1.1 of the arm's thickness, none reaches the elbow", () => {
  const readings = armOf([327, 275, 155], 311, 241);
  const height = (plateHeight: number | null) =>
    softArm(readings, woven, { ...twoPieces, plate: plateOf(plateHeight) }).capDisc.height;
  expect(height(null)).toBeCloseTo(130, 6);
  expect(height(90)).toBeCloseTo((1.1 * 327) / Math.PI, 6);
  expect(height(140)).toBeCloseTo(140, 6);
  expect(softArm(readings, woven, { ...twoPieces, plate: plateOf(900) }).capHeight).toBeCloseTo(0.6 * 311, 6);
  const thin = softArm(armOf([180, 160, 130], 311, 241), woven, twoPieces);
  expect((180 / Math.PI) ** 2 / (2 * thin.capHeight)).toBeCloseTo(18, 6);
});

interface Place {
  readonly x: number;
  readonly y: number;
}
type Pair = readonly [Place, Place];

const cutOf = (part: PatternPart) => part.lines.filter(({ kind }) => kind === "cut").map(({ points }) => points);
const near = (value: number): number => Math.round(1e6 * value) / 1e6 + 0;
const pairs = (ring: readonly Place[]): readonly Pair[] =>
  ring.map((point, i) => [point, ring[(i + 1) % ring.length] as Place]);
const signedArea = (ring: readonly Place[]): number =>
  pairs(ring).reduce((sum, [from, to]) => sum + (from.x * to.y - to.x * from.y) / 2, 0);

function distance({ x, y }: Place, [from, to]: Pair): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const share = Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - from.x - share * dx, y - from.y - share * dy);
}

/** How high a line lies where it comes by this x. */
function crossing(line: readonly Place[], x: number): number {
  const i = line.findIndex((point, k) => k > 0 && (point.x - x) * ((line[k - 1] as Place).x - x) <= 0);
  const [from, to] = [line[i - 1] as Place, line[i] as Place];
  return from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x);
}
