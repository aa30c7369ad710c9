import type { PlanFile } from "./planCheckerFile";
import { pieceThickness } from "./planCheckerThickness";
import { halvesOf, type TruePoint, type TrueSection, type TrueShape } from "./trueShapes";

/**
 * A plan's pieces laid on a true form as a hand lays them, each from its anchor line, and read with a tape. Thickness is the file's rule; the tape is the convex hull of the bare hull
 * moved out along its normals, cut at the side seams carried straight out. Nothing of the planner is used.
 */
export interface LaidReading {
  readonly girth: number;
  readonly front: number;
  readonly back: number;
}

export type LaidPlan = PlanFile & {
  readonly basis: "draft" | "lines";
  readonly mayMissMm: number;
};

export function readOver(plan: LaidPlan, form: TrueShape, depth: number): LaidReading {
  const section = form.sectionAt(depth);
  const points = surfacePoints(section);
  const { girth, front } = halvesOf(section.ring, section.seams);
  const thickness = plan.pieces.map((piece) =>
    pieceThickness(piece, depth, { girth, frontArc: front }, "in-the-plane"),
  );
  const padded = points.map(({ x, y, normalX, normalY, arcLength }) => {
    const out = thickness.reduce((sum, at) => sum + at(arcLength), 0);
    return { x: x + out * normalX, y: y + out * normalY };
  });
  return halvesOf(hullOf(padded), section.seams);
}

/** The same with the side seams re-marked at a level as the plan says. */
export function readAtLevel(plan: LaidPlan, form: TrueShape, level: string, depth: number): LaidReading {
  const { girth, front, back } = readOver(plan, form, depth);
  const moved = plan.seamShifts
    .filter((shift) => shift.level === level)
    .reduce((sum, { towards, perSideMm }) => sum + (towards === "back" ? 2 : -2) * perSideMm, 0);
  return { girth, front: front + moved, back: back - moved };
}

interface SurfacePoint extends TruePoint {
  readonly normalX: number;
  readonly normalY: number;
  readonly arcLength: number;
}

/** Points at most this far apart (mm). */
const pointStep = 2;

/** The ring as points with normals and signed distances from center front, positive to the wearer's left. */
function surfacePoints({ ring }: TrueSection): readonly SurfacePoint[] {
  const points: SurfacePoint[] = [];
  let [length, atFront] = [0, 0];
  ring.forEach((from, i) => {
    const to = ring[(i + 1) % ring.length] as TruePoint;
    const run = Math.hypot(to.x - from.x, to.y - from.y);
    // Where lines meet in one corner, rounding leaves an edge between them whose direction means nothing.
    if (run < 1e-6) return;
    if (from.x <= 0 && to.x > 0 && from.y > 0) atFront = length + (run * -from.x) / (to.x - from.x);
    const [normalX, normalY] = [(from.y - to.y) / run, (to.x - from.x) / run];
    const steps = Math.ceil(run / pointStep);
    for (let step = 0; step <= steps; step++) {
      const share = step / steps;
      points.push({
        x: from.x + share * (to.x - from.x),
        y: from.y + share * (to.y - from.y),
        normalX,
        normalY,
        arcLength: length + share * run,
      });
    }
    length += run;
  });
  return points.map((point) => {
    const signed = point.arcLength - atFront;
    return {
      ...point,
      arcLength: signed > length / 2 ? signed - length : signed < -length / 2 ? signed + length : signed,
    };
  });
}

/** The convex hull of points, as a ring (Andrew's monotone chain, Inf. Proc. Letters 9, 1979, 216-219). */
function hullOf(points: readonly TruePoint[]): readonly TruePoint[] {
  const sorted = points.toSorted((p, q) => p.x - q.x || p.y - q.y);
  const half = (ordered: readonly TruePoint[]): readonly TruePoint[] => {
    const chain: TruePoint[] = [];
    for (const point of ordered) {
      while (chain.length >= 2 && turn(chain.at(-2) as TruePoint, chain.at(-1) as TruePoint, point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

const turn = (a: TruePoint, b: TruePoint, c: TruePoint): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
