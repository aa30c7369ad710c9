import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import type { HalvesSection } from "../../../src/core/body/section";
import { heightCurve } from "../../../src/core/geometry/heightCurve";
import type { Cloth } from "../../../src/core/cover/cloth";
import { coverGround } from "../../../src/core/cover/coverGround";
import { type CoverGround, type CoverRow, coverRows } from "../../../src/core/cover/coverRows";
import { type CoverPanel, type FittedCover, fittedCover } from "../../../src/core/cover/fittedCover";
import { pointsPerRow } from "../../../src/core/cover/panelMesh";
import { type FlatPoint, panelEdge } from "../../../src/core/cover/panelShape";
import type { Plan } from "../../../src/core/plan/plan";
import { planFitting } from "../../../src/core/plan/planFitting";
import { paddedSurface } from "../../../src/core/surface/paddedSurface";
import { tapePoints } from "../../../src/core/tape/tape";
import { mm, ratio } from "../../../src/core/units";
import { people, type Person } from "../../tools/people";

/** A made-up person's padded form with what its covers are cut for, and the covers in every cloth that is offered. */
export interface CoverCase {
  readonly one: Person;
  readonly plan: Plan;
  readonly ground: CoverGround;
  readonly rows: readonly CoverRow[];
  readonly covers: readonly FittedCover[];
}

export const woven: Cloth = { kind: "woven", ease: ratio(0) };
export const roomy: Cloth = { kind: "woven", ease: ratio(0.02) };
export const knit: Cloth = { kind: "knit", stretch: ratio(0.1), shortening: ratio(0.03) };

export const coverCases = (count: number): readonly CoverCase[] =>
  people(count).map((one) => {
    const plan = planFitting({ body: one.body, form: one.form, batting: one.batting });
    const apexToApex = one.body.apexToApex ?? 190;
    const ground = coverGround(plan.levels, plan.pieces, { apexToApex, lowerEdge: null, read: [] });
    const covers = [woven, roomy, knit].map((cloth) => fittedCover(ground, cloth));
    return { one, plan, ground, rows: coverRows(ground), covers };
  });

/** How long cloth is for a length of the surface, reckoned here once more: across and along the grain. */
export const asCut = (cloth: Cloth): { readonly across: number; readonly along: number } =>
  cloth.kind === "knit"
    ? { across: 1 / (1 + cloth.stretch), along: 1 / (1 - cloth.shortening) }
    : { across: 1 + cloth.ease, along: 1 };

const geometry = new GeometryFactory();
const coordinates = (points: readonly FlatPoint[]) => points.map(({ x, y }) => new Coordinate(x, y));

/** Lines and areas of a general-purpose geometry library. */
export const libraryLine = (points: readonly FlatPoint[]) => geometry.createLineString(coordinates(points));
export const libraryPoint = (x: number, y: number) => geometry.createPoint(new Coordinate(x, y));
export const libraryArea = (ring: readonly FlatPoint[]) =>
  geometry.createPolygon(geometry.createLinearRing(coordinates([...ring, ring[0] as FlatPoint])));
export const libraryLength = (points: readonly FlatPoint[]): number => libraryLine(points).getLength();

/** The edges of a panel, each from the top line down. */
export const edgesOf = ({ shape }: CoverPanel) => ({
  first: panelEdge(shape, 0),
  last: panelEdge(shape, pointsPerRow - 1),
});

/** A ground whose sections change evenly or as a curve from one depth to the next; the first of them is the top line. */
export function groundOf(
  sections: readonly { readonly depth: number; readonly section: HalvesSection }[],
  princess = { left: 0.5, right: 0.5 },
  between: "straight" | "curved" = "curved",
): CoverGround {
  const depths = sections.map(({ depth }) => depth);
  const straight = (values: readonly number[]) => (depth: number) => {
    const below = Math.max(
      1,
      depths.findIndex((place) => place >= depth),
    );
    const [from, to] = [depths[below - 1] as number, depths[below] as number];
    const share = Math.min(1, Math.max(0, (depth - from) / (to - from)));
    return (values[below - 1] as number) * (1 - share) + (values[below] as number) * share;
  };
  const curve = (part: keyof HalvesSection) => {
    const values = sections.map(({ section }) => section[part] as number);
    return between === "straight" ? straight(values) : heightCurve(depths, values);
  };
  const parts = {
    leftBreadth: curve("leftBreadth"),
    rightBreadth: curve("rightBreadth"),
    frontDepth: curve("frontDepth"),
    backDepth: curve("backDepth"),
    frontExponent: curve("frontExponent"),
    backExponent: curve("backExponent"),
  };
  const surface = paddedSurface(
    (depth) => ({
      leftBreadth: mm(parts.leftBreadth(depth)),
      rightBreadth: mm(parts.rightBreadth(depth)),
      frontDepth: mm(parts.frontDepth(depth)),
      backDepth: mm(parts.backDepth(depth)),
      frontExponent: ratio(parts.frontExponent(depth)),
      backExponent: ratio(parts.backExponent(depth)),
    }),
    [],
    4 * tapePoints,
  );
  const [top, bottom] = [depths[0] as number, depths.at(-1) as number];
  const lines = [
    { name: "bust" as const, depthBelowNape: top },
    { name: "fullHip" as const, depthBelowNape: bottom },
  ];
  return { surface, lines, hem: bottom, turnUnder: 0, princess, hasSideFrontSeams: false };
}

export const section = (
  left: number,
  right: number,
  front: number,
  back: number,
  exponents: readonly [number, number] = [2, 2],
): HalvesSection => ({
  leftBreadth: mm(left),
  rightBreadth: mm(right),
  frontDepth: mm(front),
  backDepth: mm(back),
  frontExponent: ratio(exponents[0]),
  backExponent: ratio(exponents[1]),
});
