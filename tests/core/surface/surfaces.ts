import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import type { Plan } from "../../../src/core/plan/plan";
import { planFitting } from "../../../src/core/plan/planFitting";
import { formCurveOf } from "../../../src/core/plan/torsosOfPlan";
import { type PaddedSurface, paddedSurface } from "../../../src/core/surface/paddedSurface";
import { people, type Person } from "../../tools/people";

/** A made-up person with a plan and the surface that it makes. */
export interface SurfaceCase {
  readonly one: Person;
  readonly plan: Plan;
  readonly surface: PaddedSurface;
}

export function surfaceCases(count: number, pointsPerEighth: number): readonly SurfaceCase[] {
  return people(count).map((one) => {
    const plan = planFitting({ body: one.body, form: one.form, batting: one.batting });
    return { one, plan, surface: surfaceOf(plan, pointsPerEighth) };
  });
}

export const surfaceOf = ({ levels, pieces }: Plan, pointsPerEighth: number): PaddedSurface =>
  paddedSurface(formCurveOf(levels), pieces, pointsPerEighth);

/** From above the bust to below the full hip, on the lines and between them (mm below the nape). */
export function depthsOf({ levels }: Plan): readonly number[] {
  const lines = levels.map(({ depthBelowNape }) => depthBelowNape.value);
  const [first, last] = [lines[0] as number, lines.at(-1) as number];
  const between = lines.slice(1).flatMap((line, i) => {
    const above = lines[i] as number;
    return [0.13, 0.5, 0.81].map((share) => above + share * (line - above));
  });
  return [first - 60, ...lines, ...between, last + 60];
}

const geometry = new GeometryFactory();

/** Flat coordinates as the shell of a general-purpose geometry library; points that rounding puts beside one another are one. */
export function shellOf(points: Float64Array) {
  const ring = Array.from({ length: points.length / 2 }, (_, i) => new Coordinate(points[2 * i], points[2 * i + 1]));
  const apart = ring.filter((point, i) => point.distance(ring[(i + 1) % ring.length]) > 1e-6);
  return geometry.createPolygon(geometry.createLinearRing([...apart, apart[0]]));
}
