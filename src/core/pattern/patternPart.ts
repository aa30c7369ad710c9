import type { LevelName } from "../body/vocabulary";
import { type Millimetres, mm, type Ratio } from "../units";

/** A place on a flat part (mm), y upwards; where the origin lies is said by what makes the part. */
export interface FlatPoint {
  readonly x: Millimetres;
  readonly y: Millimetres;
}

/**
 * One edge of a flat part from corner to corner, as it is sewn, counterclockwise around the part; its last point is the first
 * of the next edge. Two edges that are sewn together name each other.
 */
export interface PatternEdge {
  readonly id: string;
  readonly points: readonly FlatPoint[];
  readonly sewnTo: string | null;
  /** The share that it is longer than the edge it is gathered onto; left out where both are alike. */
  readonly gathered?: Ratio;
}

/**
 * A line drawn with a part: the line it is cut along where that is not the sewing line, a level line, the line that is laid on a
 * line of the form, the grain, a dart to take in, a slit to cut.
 */
export interface PatternLine {
  readonly kind: "cut" | "level" | "anchor" | "grain" | "dart" | "slit";
  readonly name: string;
  readonly points: readonly FlatPoint[];
}

/** The lines around an arm, from the shoulder down. */
export const armLineNames = ["upperArm", "elbow", "wrist"] as const;
export type ArmLineName = (typeof armLineNames)[number];

/** How long a level line, or a line around an arm, is within a part, from edge to edge (mm). */
export interface PartLevel {
  readonly name: LevelName | ArmLineName;
  readonly length: Millimetres;
}

/** A flat part at its true size: one layer of batting, one panel of a cover, one part of an arm. */
export interface PatternPart {
  readonly id: string;
  readonly kind: "batting" | "cover" | "arm";
  /** The piece, panel or arm that it is a part of. */
  readonly of: string;
  readonly edges: readonly PatternEdge[];
  readonly lines: readonly PatternLine[];
  readonly notches: readonly FlatPoint[];
  readonly levels: readonly PartLevel[];
}

export const flat = (x: number, y: number): FlatPoint => ({ x: mm(x), y: mm(y) });

/** The sewing line all around a part, counterclockwise, its first point not repeated. */
export const partOutline = ({ edges }: Pick<PatternPart, "edges">): readonly FlatPoint[] =>
  edges.flatMap(({ points }) => points.slice(0, -1));

/** How long a drawn line is (mm). */
export const lineLength = (points: readonly FlatPoint[]): Millimetres =>
  mm(points.slice(1).reduce((sum, { x, y }, i) => sum + Math.hypot(x - at(points, i).x, y - at(points, i).y), 0));

const at = (points: readonly FlatPoint[], i: number): FlatPoint => points[i] as FlatPoint;

/** The rectangle around a part's outline and all that is drawn in it. */
export interface PartFrame {
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
}

export function partFrame(part: Pick<PatternPart, "edges" | "lines">): PartFrame {
  const points = [...partOutline(part), ...part.lines.flatMap((line) => line.points)];
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
  return { left, bottom, width: Math.max(...xs) - left, height: Math.max(...ys) - bottom };
}
