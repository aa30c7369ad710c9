import type { FigureView } from "../figureView";
import { circle, closedPath, openPath, segment } from "../pathText";
import { at, between, type PicturePoint } from "../scene";
import type { FacingStrip } from "../pieceOnFigure";
import { hang } from "./torsoFigure";
import type { TorsoShape } from "./torsoShape";

/** The outline of batting on the form as it lies on it: level edges hang as level lines do. */
interface BattingOutline {
  readonly path: string;
  /** The outline as points, from the top left corner around to the right. */
  readonly ring: readonly PicturePoint[];
}

export function battingPath(strip: FacingStrip, shape: TorsoShape, view: FigureView): BattingOutline {
  const lie = ({ x, y }: PicturePoint): PicturePoint => {
    if (view === "side") return at(x, y);
    const across = Math.min(1, Math.abs(x) / Math.max(1, shape.half(y)));
    return at(x, y + hang(shape, y) * Math.sqrt(1 - across * across));
  };
  const edge = (row: FacingStrip[number] | undefined): readonly PicturePoint[] =>
    row === undefined
      ? []
      : Array.from({ length: stepsAcross + 1 }, (_, i) => lie(between(row.left, row.right, i / stepsAcross)));
  const ring = [
    ...edge(strip[0]),
    ...strip.slice(1, -1).map(({ right }) => lie(right)),
    ...edge(strip.at(-1)).toReversed(),
    ...strip
      .slice(1, -1)
      .map(({ left }) => lie(left))
      .toReversed(),
  ];
  return { path: closedPath(ring), ring };
}

const stepsAcross = 14;

/** Long stitches 3/4 in inside the edge all around, and twice down. */
export function stitchesInside(ring: readonly PicturePoint[]): readonly string[] {
  const { middle, half } = boxOf(ring);
  const [across, down] = [half.x, half.y].map((length) => Math.max(0.3, (length - inside) / length)) as [
    number,
    number,
  ];
  const inner = ring.map(({ x, y }) => at(middle.x + (x - middle.x) * across, middle.y + (y - middle.y) * down));
  const [top, bottom] = [middle.y - half.y * down, middle.y + half.y * down];
  const columns = [-0.45, 0.45].map((share) => middle.x + half.x * share * across);
  return [closedPath(inner), ...columns.map((x) => openPath([at(x, top), at(x, bottom)]))];
}

const inside = 19;

/** Fibers across the cut edge, slightly askew; from a fixed seed, so that pictures repeat. */
export function fibersAlong(ring: readonly PicturePoint[]): readonly string[] {
  const { middle } = boxOf(ring);
  let seed = 7;
  const chance = () => {
    seed = (seed * 16807) % 2147483647;
    return seed / 2147483647;
  };
  return ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length] ?? from;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const count = Math.floor(length / fiberStep);
    const [across, down] = [(to.y - from.y) / Math.max(1, length), -(to.x - from.x) / Math.max(1, length)];
    return Array.from({ length: count }, (_, k) => {
      const place = between(from, to, (k + chance()) / Math.max(1, count));
      const outward = (place.x - middle.x) * across + (place.y - middle.y) * down > 0 ? 1 : -1;
      const reach = outward * (4 + 7 * chance());
      const skew = 5 * (chance() - 0.5);
      return segment(place, at(place.x + across * reach + down * skew, place.y + down * reach - across * skew));
    });
  });
}

/** Twice as far apart as they are, so that they can be told on a small screen (mm). */
const fiberStep = 6;

/** Twelve pins at even steps along the edge, slanted, head up and outward. */
export function pinsAlong(ring: readonly PicturePoint[]): readonly { readonly shaft: string; readonly head: string }[] {
  const { middle } = boxOf(ring);
  const around = [...ring, ring[0] ?? middle];
  const lengths = around.slice(1).map((to, i) => Math.hypot(to.x - (around[i]?.x ?? 0), to.y - (around[i]?.y ?? 0)));
  const whole = lengths.reduce((sum, length) => sum + length, 0);
  return Array.from({ length: pinCount }, (_, pin) => {
    const head = placeAlong(around, lengths, (whole * (pin + 0.5)) / pinCount);
    const way = head.x < middle.x ? 1 : -1;
    return { shaft: segment(head, at(head.x + way * 26, head.y + 20)), head: circle(head, 6.5) };
  });
}

const pinCount = 12;

/** So far along a line through points, whose stretches are that long. */
function placeAlong(points: readonly PicturePoint[], lengths: readonly number[], far: number): PicturePoint {
  let left = far;
  for (const [i, length] of lengths.entries()) {
    const [from, to] = [points[i], points[i + 1]];
    if (from !== undefined && to !== undefined && left <= length) return between(from, to, left / Math.max(1, length));
    left -= length;
  }
  return points[0] ?? at(0, 0);
}

function boxOf(ring: readonly PicturePoint[]): { readonly middle: PicturePoint; readonly half: PicturePoint } {
  const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return { middle: at((left + right) / 2, (top + bottom) / 2), half: at((right - left) / 2, (bottom - top) / 2) };
}
