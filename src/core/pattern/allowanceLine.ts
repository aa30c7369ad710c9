/** A place on a flat part (mm). */
interface Place {
  readonly x: number;
  readonly y: number;
}

/** One edge of a flat part from corner to corner, and how much cloth stands beyond it (mm). */
export interface EdgeAllowance {
  readonly line: readonly Place[];
  readonly by: number;
}

/**
 * The line that a part is cut along: its edges, clockwise around it, moved out by an allowance each and joined in mitered
 * corners (mm). A miter that would stand out farther than a few allowances is cut off square. Closed, clockwise from the
 * corner where the first edge begins, its first point not repeated at the end.
 */
export function allowanceLine(edges: readonly EdgeAllowance[]): readonly Place[] {
  const moved = edges.map(({ line, by }) => ({ line: movedOut(line, by), start: line[0] as Place, by }));
  return moved.flatMap((edge, i) => {
    const before = moved.at(i - 1) as (typeof moved)[number];
    const longest = longestMiter * Math.max(before.by, edge.by);
    return [...corner(before.line, edge.line, edge.start, longest), ...edge.line.slice(1, -1)];
  });
}

/** Allowances: the tip of a sharp corner is trimmed before it is sewn in any case. A judgement. */
const longestMiter = 2;

/** A drawn line moved to its left: outward, since an outline runs clockwise. Each bend is mitered. */
function movedOut(line: readonly Place[], by: number): readonly Place[] {
  return line.map((point, i) => {
    const [before, after] = [line[i - 1] ?? point, line[i + 1] ?? point];
    const [leave, arrive] = [normal(before, point), normal(point, after)];
    const [x, y] = [leave.x + arrive.x, leave.y + arrive.y];
    const onOne = i === 0 || i === line.length - 1 ? 1 : (x * x + y * y) / 2;
    return { x: point.x + (by * x) / onOne, y: point.y + (by * y) / onOne };
  });
}

/** The unit normal to the left of the way from one point to another; none where they are one. */
function normal(from: Place, to: Place): Place {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  return length === 0 ? { x: 0, y: 0 } : { x: -dy / length, y: dx / length };
}

/**
 * Where the last stretch of one line and the first of the next meet, carried on as far as they must; the two places on
 * them where a tip too long is cut off. Edges that run straight on meet where they end.
 */
function corner(one: readonly Place[], next: readonly Place[], at: Place, longest: number): readonly Place[] {
  const [a, b] = [one[one.length - 2] as Place, one[one.length - 1] as Place];
  const [c, d] = [next[0] as Place, next[1] as Place];
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const turn = ux * vy - uy * vx;
  if (Math.abs(turn) < straightOn * Math.hypot(ux, uy) * Math.hypot(vx, vy)) return [b];
  const share = ((c.x - a.x) * vy - (c.y - a.y) * vx) / turn;
  const tip = { x: a.x + share * ux, y: a.y + share * uy };
  const length = Math.hypot(tip.x - at.x, tip.y - at.y);
  return length <= longest ? [tip] : [cutOff(b, tip, at, longest), cutOff(c, tip, at, longest)];
}

/** The sine of a turn that no pencil shows. */
const straightOn = 0.001;

/** The place on the way to a tip that lies as far out of the corner as is left standing. */
function cutOff(from: Place, tip: Place, at: Place, longest: number): Place {
  const length = Math.hypot(tip.x - at.x, tip.y - at.y);
  const out = (one: Place): number => ((one.x - at.x) * (tip.x - at.x) + (one.y - at.y) * (tip.y - at.y)) / length;
  const share = (longest - out(from)) / (length - out(from));
  return { x: from.x + share * (tip.x - from.x), y: from.y + share * (tip.y - from.y) };
}
