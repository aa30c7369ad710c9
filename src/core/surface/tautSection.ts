import type { QuarterLengths } from "../geometry/outline";
import { tautRing } from "../geometry/tautRing";
import { assert } from "../result";
import type { LevelPoint, PaddedSection } from "./paddedSection";

/**
 * A taut tape, or taut cloth, around a padded section: its convex hull, in the section's own frame (mm). It runs from
 * center back over the right side, center front and the left side to center back again, which stands at both ends. Center
 * front and the side lines of the bare form, carried straight out along x = 0 and y = 0, are among its points. Arc lengths are signed, along the
 * tape itself, from center front and positive to the wearer's left.
 */
export interface TautSection {
  readonly depthBelowNape: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly arcLength: Float64Array;
  readonly quarters: QuarterLengths;
}

/** The tape around a section that lies around its own middle; one that does not is a broken promise. */
export function tautSection({ depthBelowNape, points }: PaddedSection): TautSection {
  const ring = withCuts(tautRing(points));
  const back = ring.findIndex(({ x, y }) => x === 0 && y < 0);
  assert(back !== -1, "the tape lies around the middle of a section");
  const around = [...ring.slice(back), ...ring.slice(0, back + 1)];
  const ways = waysAlong(around);
  const wayTo = (isThere: (point: LevelPoint) => boolean) => ways[around.findIndex(isThere)] as number;
  const right = wayTo(({ x, y }) => y === 0 && x < 0);
  const front = wayTo(({ x, y }) => x === 0 && y > 0);
  const left = wayTo(({ x, y }) => y === 0 && x > 0);
  const end = ways[ways.length - 1] as number;
  return {
    depthBelowNape,
    x: Float64Array.from(around, ({ x }) => x),
    y: Float64Array.from(around, ({ y }) => y),
    arcLength: Float64Array.from(ways, (way) => way - front),
    quarters: { rightBack: right, rightFront: front - right, leftFront: left - front, leftBack: end - left },
  };
}

/** The corners with a point more wherever an edge crosses the middle line or the side line. */
function withCuts(corners: Float64Array): readonly LevelPoint[] {
  const count = corners.length / 2;
  return Array.from({ length: count }, (_, i) => i).flatMap((i): readonly LevelPoint[] => {
    const next = (i + 1) % count;
    const [x, y] = [corners[2 * i] as number, corners[2 * i + 1] as number];
    const [toX, toY] = [corners[2 * next] as number, corners[2 * next + 1] as number];
    const cuts: { readonly share: number; readonly point: LevelPoint }[] = [];
    if (x * toX < 0) {
      const share = x / (x - toX);
      cuts.push({ share, point: { x: 0, y: y + share * (toY - y) } });
    }
    if (y * toY < 0) {
      const share = y / (y - toY);
      cuts.push({ share, point: { x: x + share * (toX - x), y: 0 } });
    }
    return [{ x, y }, ...cuts.sort((one, other) => one.share - other.share).map(({ point }) => point)];
  });
}

function waysAlong(points: readonly LevelPoint[]): readonly number[] {
  let way = 0;
  return points.map(({ x, y }, i) => {
    const before = points[i - 1];
    if (before !== undefined) way += Math.hypot(x - before.x, y - before.y);
    return way;
  });
}

/**
 * The point of the tape at a signed arc length from center front, straight between its corners. Beyond center back it stays
 * at center back.
 */
export function tautPointAt({ x, y, arcLength: ways }: TautSection, arcLength: number): LevelPoint {
  let [from, to] = [0, ways.length - 1];
  while (to - from > 1) {
    const middle = (from + to) >> 1;
    if ((ways[middle] as number) <= arcLength) from = middle;
    else to = middle;
  }
  const [start, end] = [ways[from] as number, ways[to] as number];
  const share = end === start ? 0 : Math.min(1, Math.max(0, (arcLength - start) / (end - start)));
  const mix = (values: Float64Array) => (values[from] as number) * (1 - share) + (values[to] as number) * share;
  return { x: mix(x), y: mix(y) };
}
