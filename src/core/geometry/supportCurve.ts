import { assert } from "../result";

/**
 * A convex curve known by its support in evenly spaced directions: the smooth curve that touches every supporting line
 * in the middle of what the lines beside it leave of it, drawn from touch to touch as a parabola with its corner on both
 * lines. It has the given support in the given directions and is convex wherever the supporting lines make a convex
 * polygon. The first direction is x, the next is turned towards y; at least 12 directions, a multiple of four.
 */
export interface SupportShape {
  readonly support: readonly number[];
}

/**
 * A section drawn as points in the level plane (mm, x to the wearer's left, y to the front), in order from center back
 * over the right side, center front and the left side towards center back again (the last point is not repeated).
 * Each quarter has the same number of points. Each point carries its outward normal and its signed distance along the
 * bare surface from center front, positive to the left: from minus the right half of the girth up to, but not including,
 * the left half.
 */
export interface CurveOutline {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly normalX: Float64Array;
  readonly normalY: Float64Array;
  readonly arcLength: Float64Array;
  readonly quarters: CurveLengths;
}

/** Lengths of the four quarters of a section's outline, from center to side (mm). */
export interface CurveLengths {
  readonly leftFront: number;
  readonly rightFront: number;
  readonly leftBack: number;
  readonly rightBack: number;
}

/** Points between one touch and the next: chords are then short of the curve by less than a hundredth of a millimeter. */
const pointsPerStep = 6;

/** The curve as close points with normals, in the order of an outline, with the lengths of its quarters. */
interface Trace {
  readonly points: readonly TracePoint[];
  /** Where each quarter starts in the points: right back, right front, left front, left back, and the end. */
  readonly starts: readonly number[];
}

interface TracePoint {
  readonly x: number;
  readonly y: number;
  readonly normalX: number;
  readonly normalY: number;
  /** Distance from center back on the way around. */
  readonly way: number;
}

export function tracedLengths(shape: SupportShape): CurveLengths {
  const { points, starts } = trace(shape);
  const [back, right, front, left, end] = starts.map((at) => (points[at] as TracePoint).way) as [
    number,
    number,
    number,
    number,
    number,
  ];
  return { rightBack: right - back, rightFront: front - right, leftFront: left - front, leftBack: end - left };
}

/**
 * The outline with so many points in each quarter, spread half by length and half by turning, so that neither flat
 * stretches nor corners are thinly drawn.
 */
export function tracedOutline(shape: SupportShape, perQuarter: number): CurveOutline {
  const { points, starts } = trace(shape);
  const quarters = tracedLengths(shape);
  const outline = {
    count: 4 * perQuarter,
    x: new Float64Array(4 * perQuarter),
    y: new Float64Array(4 * perQuarter),
    normalX: new Float64Array(4 * perQuarter),
    normalY: new Float64Array(4 * perQuarter),
    arcLength: new Float64Array(4 * perQuarter),
    quarters,
  };
  for (let quarter = 0; quarter < 4; quarter++) {
    const run = points.slice(starts[quarter], (starts[quarter + 1] as number) + 1);
    drawRun(outline, quarter * perQuarter, perQuarter, run, quarters.rightBack + quarters.rightFront);
  }
  return outline;
}

function drawRun(outline: CurveOutline, at: number, count: number, run: readonly TracePoint[], front: number): void {
  const first = run[0] as TracePoint;
  const length = (run.at(-1) as TracePoint).way - first.way;
  let [turned, step] = [0, 0];
  const deviation = run.map((point, i) => {
    if (i > 0) turned += turnOf(run[i - 1] as TracePoint, point);
    return (point.way - first.way) / length + turned / (Math.PI / 2);
  });
  const most = deviation.at(-1) as number;
  for (let i = 0; i < count; i++) {
    const wanted = (most * i) / count;
    while (step < run.length - 2 && (deviation[step + 1] as number) <= wanted) step++;
    const [from, to] = [run[step] as TracePoint, run[step + 1] as TracePoint];
    const gap = (deviation[step + 1] as number) - (deviation[step] as number);
    const share = gap > 0 ? (wanted - (deviation[step] as number)) / gap : 0;
    const mix = (a: number, b: number) => a + (b - a) * share;
    const [normalX, normalY] = [mix(from.normalX, to.normalX), mix(from.normalY, to.normalY)];
    const size = Math.hypot(normalX, normalY);
    outline.x[at + i] = mix(from.x, to.x);
    outline.y[at + i] = mix(from.y, to.y);
    outline.normalX[at + i] = normalX / size;
    outline.normalY[at + i] = normalY / size;
    outline.arcLength[at + i] = mix(from.way, to.way) - front;
  }
}

const turnOf = (from: TracePoint, to: TracePoint): number =>
  Math.abs(
    Math.atan2(
      from.normalX * to.normalY - from.normalY * to.normalX,
      from.normalX * to.normalX + from.normalY * to.normalY,
    ),
  );

type Free = Omit<TracePoint, "way">;

function trace({ support }: SupportShape): Trace {
  assert(support.length >= 12 && support.length % 4 === 0, "a curve is known in at least 12 directions, by fours");
  const loose = loosePoints(support);
  const axes = [
    { value: ({ x }: Free) => x, keep: ({ y }: Free) => y < 0 },
    { value: ({ y }: Free) => y, keep: ({ x }: Free) => x < 0 },
    { value: ({ x }: Free) => x, keep: ({ y }: Free) => y > 0 },
    { value: ({ y }: Free) => y, keep: ({ x }: Free) => x > 0 },
  ];
  const crossings = axes.map(({ value, keep }) => crossing(loose, value, keep));
  const points: TracePoint[] = [];
  const starts: number[] = [];
  const add = (point: Free) => {
    const last = points.at(-1);
    const way = last === undefined ? 0 : last.way + Math.hypot(point.x - last.x, point.y - last.y);
    points.push({ ...point, way });
  };
  crossings.forEach(({ at, point }, i) => {
    const next = crossings[(i + 1) % 4] as Crossing;
    starts.push(points.length);
    add(point);
    const between = (next.at - at + loose.length) % loose.length;
    for (let step = 1; step <= between; step++) add(loose[(at + step) % loose.length] as Free);
  });
  starts.push(points.length);
  add((crossings[0] as Crossing).point);
  return { points, starts };
}

interface Crossing {
  /** The point before the crossing. */
  readonly at: number;
  readonly point: Free;
}

function crossing(loose: readonly Free[], value: (point: Free) => number, keep: (point: Free) => boolean): Crossing {
  for (let at = 0; at < loose.length; at++) {
    const [from, to] = [loose[at] as Free, loose[(at + 1) % loose.length] as Free];
    const [before, after] = [value(from), value(to)];
    if (!keep(from) || !keep(to) || before * after > 0 || after === 0 || before === after) continue;
    const share = before / (before - after);
    const mix = (a: number, b: number) => a + (b - a) * share;
    const [normalX, normalY] = [mix(from.normalX, to.normalX), mix(from.normalY, to.normalY)];
    return { at, point: { x: mix(from.x, to.x), y: mix(from.y, to.y), normalX, normalY } };
  }
  return assertCrossed();
}

function assertCrossed(): never {
  assert(false, "a section lies around its middle");
}

/** Points of the curve from one touch to the next, against the turning of the directions: the way an outline goes. */
function loosePoints(support: readonly number[]): readonly Free[] {
  const count = support.length;
  const step = (2 * Math.PI) / count;
  const at = (i: number) => support[(i + count) % count] as number;
  const corner = (i: number) => (at(i + 1) - at(i) * Math.cos(step)) / Math.sin(step);
  const place = (i: number, out: number, across: number) => {
    const [c, s] = [Math.cos(i * step), Math.sin(i * step)];
    return { x: out * c - across * s, y: out * s + across * c };
  };
  const touch = (i: number) => place(i, at(i), (at(i + 1) - at(i - 1)) / (2 * Math.sin(step)));
  const forward = support.flatMap((_, i): readonly Free[] => {
    const [from, bend, to] = [touch(i), place(i, at(i), corner(i)), touch(i + 1)];
    const [leave, arrive] = [Math.hypot(bend.x - from.x, bend.y - from.y), Math.hypot(to.x - bend.x, to.y - bend.y)];
    return Array.from({ length: pointsPerStep }, (_, k): Free => {
      const t = k / pointsPerStep;
      const [a, b, c] = [(1 - t) * (1 - t), 2 * t * (1 - t), t * t];
      // The parabola's own normal, so that normals of neighbors never meet outside; a corner's turns evenly.
      const turned = leave + arrive === 0 ? t : (t * arrive) / ((1 - t) * leave + t * arrive || 1);
      const [one, next] = [i * step, (i + 1) * step];
      const [outX, outY] = [
        (1 - turned) * Math.cos(one) + turned * Math.cos(next),
        (1 - turned) * Math.sin(one) + turned * Math.sin(next),
      ];
      const size = Math.hypot(outX, outY);
      return {
        x: a * from.x + b * bend.x + c * to.x,
        y: a * from.y + b * bend.y + c * to.y,
        normalX: outX / size,
        normalY: outY / size,
      };
    });
  });
  return forward.reverse();
}
