import {
  type FlatPoint,
  lineLength,
  partOutline,
  type PatternLine,
  type PatternPart,
} from "../../core/pattern/patternPart";

/** How a part is thrown onto the table: what one pixel of the picture measures there (mm), and which way it lies. */
export interface Throw {
  readonly mmPerPixel: number;
  /** Degrees, counterclockwise on the table. */
  readonly turn: number;
  readonly isMirrored: boolean;
}

export interface Pixel {
  readonly x: number;
  readonly y: number;
}

export interface ThrownLine {
  readonly kind: "outline" | "notch" | PatternLine["kind"];
  readonly name: string;
  readonly isClosed: boolean;
  readonly points: readonly Pixel[];
}

/** A part in pixels, x to the right and y down, its upper left corner at the origin. */
export interface ThrownPart {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly ThrownLine[];
  /** The name of each seam, inside the part beside the middle of its edge. */
  readonly seams: readonly ThrownSeam[];
}

export interface ThrownSeam {
  readonly name: string;
  readonly at: Pixel;
}

/** A mark across the edge, long enough to be seen beside lines of 5 pixels (mm). */
const notchLength = 10;

/** From an edge to the middle of its seam's name (px). */
const seamGap = 26;

export function thrownPart(
  part: PatternPart,
  { mmPerPixel, turn, isMirrored }: Throw,
  seamNames: ReadonlyMap<string, string> = new Map(),
): ThrownPart {
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const toPixel = ({ x, y }: Pixel): Pixel => {
    const across = isMirrored ? -x : x;
    return { x: (across * cos - y * sin) / mmPerPixel, y: -(across * sin + y * cos) / mmPerPixel };
  };
  const outline = partOutline(part);
  const isCutApart = part.lines.some(({ kind }) => kind === "cut");
  const flatLines: readonly ThrownLine[] = [
    { kind: "outline", name: "outline", isClosed: true, points: outline },
    ...part.lines.map(({ kind, name, points }) => ({ kind, name, isClosed: false, points })),
    ...part.notches.map((at) => ({
      kind: "notch" as const,
      name: "notch",
      isClosed: false,
      points: notchMark(outline, at, isCutApart ? notchLength : -notchLength),
    })),
  ];
  const lines = flatLines.map((line) => ({ ...line, points: line.points.map(toPixel) }));
  const all = lines.flatMap(({ points }) => points);
  const [left, top] = [Math.min(...all.map(({ x }) => x)), Math.min(...all.map(({ y }) => y))];
  return {
    width: Math.max(...all.map(({ x }) => x)) - left,
    height: Math.max(...all.map(({ y }) => y)) - top,
    lines: lines.map((line) => ({ ...line, points: line.points.map(({ x, y }) => ({ x: x - left, y: y - top })) })),
    seams: part.edges.flatMap(({ id, points }) => {
      const name = seamNames.get(id);
      if (name === undefined) return [];
      const { x, y } = toPixel(insideOf(points, seamGap * mmPerPixel));
      return [{ name, at: { x: x - left, y: y - top } }];
    }),
  };
}

/** So far inside a part from the middle of one of its edges (mm): parts run counterclockwise, so inside lies to the left. */
function insideOf(points: readonly FlatPoint[], gap: number): Pixel {
  let left = lineLength(points) / 2;
  for (const [i, from] of points.entries()) {
    const to = points[i + 1];
    if (to === undefined) break;
    const [x, y] = [to.x - from.x, to.y - from.y];
    const size = Math.hypot(x, y);
    if (left > size) {
      left -= size;
      continue;
    }
    return {
      x: from.x + (left * x - gap * y) / size,
      y: from.y + (left * y + gap * x) / size,
    };
  }
  return points[0] ?? { x: 0, y: 0 };
}

/** Half the height of a word, with its black rim and the line's own width to spare (px). */
const besideGap = 22;

/** Where a word stands that runs along a straight line, three quarters of its way, and how far it is turned (degrees). */
export function wordBeside(points: readonly Pixel[]): Pixel & { readonly turn: number } {
  const [from, to] = [points[0], points.at(-1)] as [Pixel, Pixel];
  const away = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const [x, y] = [(to.x - from.x) / away, (to.y - from.y) / away];
  const angle = (Math.atan2(y, x) * 180) / Math.PI;
  return {
    x: from.x + 0.75 * away * x - besideGap * y,
    y: from.y + 0.75 * away * y + besideGap * x,
    turn: angle > 90 ? angle - 180 : angle <= -90 ? angle + 180 : angle,
  };
}

/** From the sewing line straight out into the allowance, or into a part that has none. The outline runs counterclockwise. */
function notchMark(outline: readonly FlatPoint[], at: FlatPoint, length: number): readonly Pixel[] {
  let [nearest, normal] = [Number.POSITIVE_INFINITY, { x: 0, y: 0 }];
  for (const [i, from] of outline.entries()) {
    const to = outline[(i + 1) % outline.length] as FlatPoint;
    const [x, y] = [to.x - from.x, to.y - from.y];
    const size = Math.hypot(x, y);
    if (size === 0) continue;
    const along = Math.min(size, Math.max(0, ((at.x - from.x) * x + (at.y - from.y) * y) / size));
    const away = Math.hypot(from.x + (x * along) / size - at.x, from.y + (y * along) / size - at.y);
    if (away < nearest) [nearest, normal] = [away, { x: y / size, y: -x / size }];
  }
  return [at, { x: at.x + length * normal.x, y: at.y + length * normal.y }];
}

/** Turns that are tried, in this order: as it is, on its side, then askew. */
const turnsTried = [0, 90, 75, 105, 60, 120, 45, 135, 30, 150, 15, 165] as const;

/** The first turn at which a part lies within the picture; where none does, the one that shows most of it. */
export function turnThatFits(
  part: PatternPart,
  mmPerPixel: number,
  room: { readonly width: number; readonly height: number },
): { readonly turn: number; readonly fits: boolean } {
  const missing = (turn: number): number => {
    const { width, height } = thrownPart(part, { mmPerPixel, turn, isMirrored: false });
    return Math.max(0, width - room.width) + Math.max(0, height - room.height);
  };
  const best = turnsTried.reduce<{ turn: number; by: number }>(
    (found, turn) => {
      if (found.by === 0) return found;
      const by = missing(turn);
      return by < found.by ? { turn, by } : found;
    },
    { turn: 0, by: Number.POSITIVE_INFINITY },
  );
  return { turn: best.turn, fits: best.by === 0 };
}

/** What one pixel measures after the bar, which should measure so much, was measured on the table (mm). */
export const calibrated = (mmPerPixel: number, shouldRead: number, reads: number): number =>
  (mmPerPixel * reads) / shouldRead;

/** A projector a hand's breadth over a table and one under a high ceiling (mm for one pixel): what lies beyond was misread. */
export const sharpest = 0.02;
export const coarsest = 4;
export const isThrow = (mmPerPixel: number): boolean => mmPerPixel >= sharpest && mmPerPixel <= coarsest;
