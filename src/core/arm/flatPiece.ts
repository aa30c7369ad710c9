import { heightCurve } from "../geometry/heightCurve";
import { type ArmLineName, flat, type FlatPoint, type PatternLine } from "../pattern/patternPart";

/** A flat piece of an arm, seen from outside: edges counterclockwise from corner to corner, what is drawn within them (mm, y upwards). */
export interface FlatPiece<Edge extends string = string> {
  readonly edges: readonly FlatEdge<Edge>[];
  readonly lines: readonly PatternLine[];
  readonly notches: readonly FlatPoint[];
  /** How wide the piece is along each line of the arm. */
  readonly widths: readonly { readonly line: ArmLineName; readonly length: number }[];
}

export interface FlatEdge<Edge extends string = string> {
  readonly name: Edge;
  readonly points: readonly FlatPoint[];
}

/** The piece as a mirror shows it, its edges counterclockwise again. */
export function mirroredPiece<Edge extends string>(piece: FlatPiece<Edge>): FlatPiece<Edge> {
  const mirrored = (points: readonly FlatPoint[]) => points.map(({ x, y }) => flat(-x, y));
  return {
    edges: piece.edges.toReversed().map(({ name, points }) => ({ name, points: mirrored(points.toReversed()) })),
    lines: piece.lines.map((line) => ({ ...line, points: mirrored(line.points) })),
    notches: mirrored(piece.notches),
    widths: piece.widths,
  };
}

/** A place that an edge runs through, so far along the arm (mm). */
export interface EdgeStop {
  readonly along: number;
  readonly x: number;
  readonly y: number;
}

/**
 * A smooth edge through places, in their order, that never overshoots them: each coordinate is a monotone cubic of the way along
 * the arm, and runs straight on beyond its ends. Every place is a point of the edge.
 */
export function smoothEdge(stops: readonly EdgeStop[]): readonly FlatPoint[] {
  const all = [beyond(stops[1], stops[0]), ...stops, beyond(stops.at(-2), stops.at(-1))];
  const ways = all.map(({ along }) => along);
  const [x, y] = (["x", "y"] as const).map((axis) =>
    heightCurve(
      ways,
      all.map((stop) => stop[axis]),
    ),
  ) as [(along: number) => number, (along: number) => number];
  const places = stops.slice(1).flatMap((to, i) => {
    const from = (stops[i] as EdgeStop).along;
    const count = Math.max(1, Math.ceil((to.along - from) / edgeStep));
    return Array.from({ length: count }, (_, k) =>
      k === count - 1 ? to.along : from + ((to.along - from) * (k + 1)) / count,
    );
  });
  return [(stops[0] as EdgeStop).along, ...places].map((along) => flat(x(along), y(along)));
}

/** Points of an edge lie no farther apart (mm): a bend of a radius of 200 mm then stays within 0.02 mm. */
const edgeStep = 5;

/** One more place beyond an end, as far as the last one was. */
function beyond(before: EdgeStop | undefined, end: EdgeStop | undefined): EdgeStop {
  const [from, to] = [before as EdgeStop, end as EdgeStop];
  return { along: 2 * to.along - from.along, x: 2 * to.x - from.x, y: 2 * to.y - from.y };
}

/** Points along the edge of a tube of this girth, cut slanting, for angles around it from one to another. */
export function slantedEdge(
  girth: number,
  height: (angle: number) => number,
  from: number,
  to: number,
): readonly FlatPoint[] {
  const count = Math.max(2, Math.ceil((Math.abs(to - from) / Math.PI) * halfTurn));
  return Array.from({ length: count + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / count;
    return flat((girth * angle) / (2 * Math.PI), height(angle));
  });
}

/** Points of half a turn around a disc or a cap: chords are then shorter than their curve by 1 part in 20,000. */
export const halfTurn = 96;

/** On an edge, the first point after a place that lies this far along from it (mm), for the second of two notches. */
export function notchBeside(points: readonly FlatPoint[], at: FlatPoint): FlatPoint {
  const i = points.findIndex((one) => one.x === at.x && one.y === at.y);
  const beside = points.slice(i).find((one) => Math.hypot(one.x - at.x, one.y - at.y) >= doubleGap);
  return beside ?? at;
}

const doubleGap = 8;
