import type { Outline, QuarterLengths } from "../geometry/outline";
import type { Pad } from "./pad";
import type { PieceRow } from "./piece";

/** A height at which the stack is looked at: a drop below the nape and the bare form's outline there. */
export interface Station {
  readonly drop: number;
  readonly outline: Outline;
}

/** The thickness (mm) of all pads together at each point of the bare form's outline at one height. */
export function stackThickness(pads: readonly Pad[], station: Station): Float64Array {
  const total = new Float64Array(station.outline.count);
  for (const pad of pads) addPad(total, pad, station);
  return total;
}

/**
 * Adds one pad to the thickness at each point of an outline; says whether the pad reaches this height. (Given its plies for its
 * thickness, it counts layers.) The pad is zero on its outline and rises evenly to its full thickness over its feather: thickness × min(1, distance / feather), the
 * distance taken in the plane of (way along the bare surface from the pad's anchor, drop). A round has no ends, only a top and a
 * bottom edge.
 */
export function addPad(
  total: Float64Array,
  pad: Pad,
  { drop, outline }: Station,
  thickness: number = pad.thickness,
): boolean {
  const { rows, feather } = pad;
  const first = rows[0];
  const last = rows[rows.length - 1];
  if (first === undefined || last === undefined || drop <= first.drop || drop >= last.drop) return false;
  const toEnds = Math.min(drop - first.drop, last.drop - drop);
  if (pad.zone === "round") {
    const everywhere = thickness * Math.min(1, toEnds / feather);
    for (let i = 0; i < total.length; i++) total[i] = (total[i] as number) + everywhere;
    return true;
  }
  const near = rowsWithin(rows, drop, feather);
  const { along, quarters } = outline;
  const girth = quarters.leftFront + quarters.leftBack + quarters.rightFront + quarters.rightBack;
  const inside = thickness * Math.min(1, toEnds / feather);
  const zero = anchorAlong(pad, quarters);
  for (let i = 0; i < total.length; i++) {
    let s = (along[i] as number) - zero;
    // Points are tried once round either way.
    if (s <= near.start) s += girth;
    if (s >= near.end) s -= girth;
    if (s <= near.start || s >= near.end) continue;
    const added = s >= near.innerStart && s <= near.innerEnd ? inside : edgeThickness(near, s, drop, toEnds, thickness);
    total[i] = (total[i] as number) + added;
  }
  return true;
}

/** Where a pad's rows are counted from, as a signed distance along the bare surface from center front (mm). */
export const anchorAlong = ({ anchor }: Pick<Pad, "anchor">, quarters: QuarterLengths): number =>
  anchor === "centerBack" ? quarters.leftFront + quarters.leftBack : 0;

/** The part of a pad's outline that a height can feel, with the stretch covered there and the part of it that feels neither side. */
interface NearRows {
  readonly rows: readonly PieceRow[];
  readonly from: number;
  readonly to: number;
  /** The last of the rows that lie no lower than the height. */
  readonly at: number;
  readonly feather: number;
  readonly start: number;
  readonly end: number;
  readonly innerStart: number;
  readonly innerEnd: number;
}

function rowsWithin(rows: readonly PieceRow[], drop: number, feather: number): NearRows {
  let from = 0;
  while (from + 1 < rows.length && (rows[from + 1] as PieceRow).drop < drop - feather) from++;
  let to = rows.length - 1;
  while (to - 1 > from && (rows[to - 1] as PieceRow).drop > drop + feather) to--;
  let [at, innerStart, innerEnd] = [from, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let i = from; i <= to; i++) {
    const row = rows[i] as PieceRow;
    innerStart = Math.max(innerStart, row.start);
    innerEnd = Math.min(innerEnd, row.end);
    if (row.drop <= drop && i < to) at = i;
  }
  const [row, below] = [rows[at] as PieceRow, rows[at + 1] as PieceRow];
  const share = (drop - row.drop) / (below.drop - row.drop);
  return {
    rows,
    from,
    to,
    at,
    feather,
    start: row.start + (below.start - row.start) * share,
    end: row.end + (below.end - row.end) * share,
    innerStart: innerStart + feather,
    innerEnd: innerEnd - feather,
  };
}

/** The thickness at a point inside that feels a side of the outline; a side a feather away is not felt. */
function edgeThickness(near: NearRows, s: number, drop: number, toEnds: number, thickness: number): number {
  let least = toEnds * toEnds;
  if (s < near.innerStart) least = nearestSide(near, "start", s, drop, least);
  if (s > near.innerEnd) least = nearestSide(near, "end", s, drop, least);
  return thickness * Math.min(1, Math.sqrt(least) / near.feather);
}

/** The square of the distance to one side of the outline, if it is less than what was found: from the height outwards, as far as rows can be nearer. */
function nearestSide(
  { rows, from, to, at }: NearRows,
  side: "start" | "end",
  s: number,
  drop: number,
  found: number,
): number {
  let least = found;
  for (let i = at; i >= from; i--) {
    const away = i === at ? 0 : drop - (rows[i + 1] as PieceRow).drop;
    if (away * away >= least) break;
    least = Math.min(least, squareDistance(rows, i, side, s, drop));
  }
  for (let i = at + 1; i < to; i++) {
    const away = (rows[i] as PieceRow).drop - drop;
    if (away * away >= least) break;
    least = Math.min(least, squareDistance(rows, i, side, s, drop));
  }
  return least;
}

/** The square of the distance to one edge of a side: that from a row to the next. It is asked very often, so it makes no lists. */
function squareDistance(rows: readonly PieceRow[], i: number, side: "start" | "end", s: number, drop: number): number {
  const row = rows[i] as PieceRow;
  const below = rows[i + 1] as PieceRow;
  const place = side === "start" ? row.start : row.end;
  const runS = (side === "start" ? below.start : below.end) - place;
  const runDrop = below.drop - row.drop;
  const share = ((s - place) * runS + (drop - row.drop) * runDrop) / (runS * runS + runDrop * runDrop);
  const held = Math.max(0, Math.min(1, share));
  const awayS = s - place - held * runS;
  const awayDrop = drop - row.drop - held * runDrop;
  return awayS * awayS + awayDrop * awayDrop;
}
