import ConvexHull from "jsts/org/locationtech/jts/algorithm/ConvexHull.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import type { FileForm, FileLevel, FilePiece, FileReading } from "./planCheckerFile";
import { bareOutline, type Outline } from "./planCheckerOutline";
import { type DistanceRule, pieceThickness } from "./planCheckerThickness";

/**
 * What a taut tape reads over a stack of pieces at one level: the convex hull, by a general-purpose geometry library,
 * of the bare outline moved out along its own normals by the thickness of the stack. The side seam is the bare side
 * point carried straight out onto the hull ("straight-out"); "widest-point" takes the hull's extreme x instead, and
 * exists to measure how much that other reading would differ.
 */
export type SeamRule = "straight-out" | "widest-point";

export interface TapeRules {
  readonly distance: DistanceRule;
  readonly seam: SeamRule;
}

export const statedRules: TapeRules = { distance: "in-the-plane", seam: "straight-out" };

const geometryFactory = new GeometryFactory();

/** The readings over the first 0, 1, 2, … pieces in the order given, before any re-marking of the side seam. */
export function readingsWhilePinning(
  level: FileLevel,
  pieces: readonly FilePiece[],
  rules: TapeRules = statedRules,
): readonly FileReading[] {
  const outline = bareOutline(level.form);
  const stack = new Float64Array(outline.points.length);
  const readings: FileReading[] = [readHull(outline, stack, rules.seam)];
  for (const piece of pieces) {
    const thickness = pieceThickness(piece, level.depthBelowNapeMm, outline, rules.distance);
    let changed = false;
    outline.points.forEach((point, i) => {
      const more = thickness(point.arcLength);
      if (more === 0) return;
      stack[i] = (stack[i] as number) + more;
      changed = true;
    });
    const before = readings[readings.length - 1] as FileReading;
    readings.push(changed ? readHull(outline, stack, rules.seam) : before);
  }
  return readings;
}

/** The readings over all pieces at once, as they are or as hands made of them: quicker than piece by piece. */
export function wholeReading(level: FileLevel, pieces: readonly FilePiece[], outline: Outline): FileReading {
  const stack = new Float64Array(outline.points.length);
  for (const piece of pieces) {
    const thickness = pieceThickness(piece, level.depthBelowNapeMm, outline, statedRules.distance);
    outline.points.forEach((point, i) => {
      stack[i] = (stack[i] as number) + thickness(point.arcLength);
    });
  }
  return readHull(outline, stack, statedRules.seam);
}

/** What the tape reads over the bare form of one level, from the same outline and hull. */
export function bareReading(form: FileForm): FileReading {
  const outline = bareOutline(form);
  return { girthMm: outline.girth, frontArcMm: outline.frontArc, backArcMm: outline.backArc };
}

function readHull(outline: Outline, stack: Float64Array, seam: SeamRule): FileReading {
  const padded = outline.points.map((p, i) => {
    const out = stack[i] as number;
    return new Coordinate(p.x + out * p.normalX, p.y + out * p.normalY);
  });
  const hull = new ConvexHull(padded, geometryFactory).getConvexHull();
  const ring: readonly Spot[] = hull.getCoordinates();
  const girthMm: number = hull.getLength();
  const frontArcMm = seam === "straight-out" ? frontBySideLine(ring) : frontByWidestPoints(ring);
  return { girthMm, frontArcMm, backArcMm: girthMm - frontArcMm };
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Length of the closed ring that lies in front of the line through both side points (y = 0). */
function frontBySideLine(ring: readonly Spot[]): number {
  let front = 0;
  for (let i = 1; i < ring.length; i++) {
    const p = ring[i - 1] as Spot;
    const q = ring[i] as Spot;
    const length = Math.hypot(q.x - p.x, q.y - p.y);
    if (p.y >= 0 && q.y >= 0) front += length;
    else if (p.y > 0 || q.y > 0) front += (length * Math.max(p.y, q.y)) / Math.abs(p.y - q.y);
  }
  return front;
}

/** Length of the closed ring from its furthest point on the left, over the front, to its furthest on the right. */
function frontByWidestPoints(ring: readonly Spot[]): number {
  const open = ring.slice(1);
  const left = open.reduce((best, p, i) => (p.x > (open[best] as Spot).x ? i : best), 0);
  const right = open.reduce((best, p, i) => (p.x < (open[best] as Spot).x ? i : best), 0);
  const walk = (from: number, to: number) => {
    let length = 0;
    let front = false;
    for (let i = from; i !== to; i = (i + 1) % open.length) {
      const p = open[i] as Spot;
      const q = open[(i + 1) % open.length] as Spot;
      length += Math.hypot(q.x - p.x, q.y - p.y);
      front ||= p.y > Math.max(0, (open[left] as Spot).y, (open[right] as Spot).y);
    }
    return { length, front };
  };
  const one = walk(left, right);
  return one.front ? one.length : walk(right, left).length;
}
