import ellipe from "@stdlib/math-base-special-ellipe";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import IsValidOp from "jsts/org/locationtech/jts/operation/valid/IsValidOp.js";
import OverlayOp from "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js";
import figures from "../../../shared/body-data.json";
import type { ArmReadings } from "../../../src/core/arm/armReadings";
import { armParts, type ArmPart, type ArmPartName } from "../../../src/core/arm/armParts";
import type { SoftArm } from "../../../src/core/arm/softArm";
import type { Cloth } from "../../../src/core/cover/cloth";
import { type PatternEdge, type PatternPart, partOutline } from "../../../src/core/pattern/patternPart";
import { mm, ratio } from "../../../src/core/units";
import { chance } from "../../tools/peopleChance";

const { usArmy2012Women, nhanes2017to2020Women } = figures;

/**
 * An arm of a made-up person, the same for the same seed: upper arm by NHANES 2017 to 2020, wrist and lengths by US Army 2012 (shared
 * data), each drawn by itself within 2.5 standard deviations. The bent elbow follows the upper arm along the line of the
 * prototype's three arms; how far it strays, 8 mm, is plausible only.
 */
export function madeUpArm(seed: number): ArmReadings {
  const luck = chance(seed);
  const drawn = ({ mean, sd }: { readonly mean: number; readonly sd: number }) =>
    Math.round(mean + sd * Math.max(-2.5, Math.min(2.5, luck.normal(0, 1))));
  const { wristGirth, shoulderToElbow, elbowToWrist } = usArmy2012Women.percentiles_mm;
  const { mean, sd } = nhanes2017to2020Women.upperArmGirthRelaxed_cm;
  const upperArmGirth = drawn({ mean: 10 * mean, sd: 10 * sd });
  const wrist = drawn(wristGirth);
  const elbowGirth = Math.max(wrist + 20, Math.round(275 + 0.68 * (upperArmGirth - 327) + luck.normal(0, 8)));
  const upper = drawn(shoulderToElbow);
  return armOf([upperArmGirth, elbowGirth, wrist], upper, drawn(elbowToWrist));
}

/** Girths at upper arm, elbow and wrist, then shoulder to elbow and elbow to wrist. */
export const armOf = (
  [upperArm, elbow, wrist]: readonly [number, number, number],
  upper: number,
  lower: number,
): ArmReadings => ({
  upperArmGirth: mm(upperArm),
  elbowGirth: mm(elbow),
  wristGirth: mm(wrist),
  armLength: mm(upper + lower),
  shoulderToElbow: mm(upper),
});

export const woven: Cloth = { kind: "woven", ease: ratio(0) };
export const knit: Cloth = { kind: "knit", stretch: ratio(0.1), shortening: ratio(0.03) };

const known = new WeakMap<SoftArm, readonly ArmPart[]>();

/** The parts of an arm, each arm laid out once. */
export function partsOf(arm: SoftArm): readonly ArmPart[] {
  const parts = known.get(arm) ?? armParts(arm);
  known.set(arm, parts);
  return parts;
}

export function partOf(arm: SoftArm, name: ArmPartName): PatternPart {
  const found = partsOf(arm).find((one) => one.name === name);
  if (found === undefined) throw new Error(`no part ${name}`);
  return found.part;
}

export function edgeOf(part: PatternPart, name: string): PatternEdge {
  const found = part.edges.find(({ id }) => id === `${part.id}-${name}`);
  if (found === undefined) throw new Error(`no edge ${name} of ${part.id}`);
  return found;
}

interface Place {
  readonly x: number;
  readonly y: number;
}

const geometry = new GeometryFactory();
const ring = (points: readonly Place[]) =>
  geometry.createPolygon(
    geometry.createLinearRing([...points, points[0] as Place].map(({ x, y }) => new Coordinate(x, y))),
  );

/** By a general-purpose geometry library: whether a closed line crosses itself, its area, a length, and what of a straight line lies within. */
export const isSimple = (points: readonly Place[]): boolean => new IsValidOp(ring(points)).isValid();
export const areaOf = (points: readonly Place[]): number => ring(points).getArea();
export const lengthOf = (points: readonly Place[]): number =>
  geometry.createLineString(points.map(({ x, y }) => new Coordinate(x, y))).getLength();

/** The stretch of a straight line within a part that lies around a place, by the place and the line's direction. */
export function chordAt(
  part: PatternPart,
  at: Place,
  angle: number,
): { readonly length: number; readonly middle: Place } {
  const [dx, dy] = [1000 * Math.cos(angle), 1000 * Math.sin(angle)];
  const line = geometry.createLineString([new Coordinate(at.x - dx, at.y - dy), new Coordinate(at.x + dx, at.y + dy)]);
  const inside = OverlayOp.intersection(ring(partOutline(part)), line);
  const chords = Array.from({ length: inside.getNumGeometries() }, (_, i) => inside.getGeometryN(i)).map((one) => {
    const ends = one.getCoordinates() as readonly Place[];
    const [from, to] = [ends[0] as Place, ends.at(-1) as Place];
    return {
      length: Math.hypot(to.x - from.x, to.y - from.y),
      middle: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
    };
  });
  const away = ({ middle }: { readonly middle: Place }) => Math.hypot(middle.x - at.x, middle.y - at.y);
  return chords.reduce((best, one) => (away(one) < away(best) ? one : best));
}

/** The perimeter of an ellipse by Legendre's complete elliptic integral E(m), from a numerics package (Abramowitz and Stegun 1964, chapter 17). */
export function ellipse(breadth: number, height: number): number {
  const [long, short] = breadth >= height ? [breadth, height] : [height, breadth];
  return 2 * long * ellipe(1 - (short / long) ** 2);
}
