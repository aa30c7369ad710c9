import type { Outline } from "../geometry/outline";
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
 * distance taken in the plane of (way along the bare surface from centre front, drop). A round has no ends, only a top and a
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
  const { quarters } = outline;
  const girth = quarters.leftFront + quarters.leftBack + quarters.rightFront + quarters.rightBack;
  for (let i = 0; i < total.length; i++) {
    const distance = distanceInside(near, outline.along[i] as number, girth, drop, toEnds);
    if (distance > 0) total[i] = (total[i] as number) + thickness * Math.min(1, distance / feather);
  }
  return true;
}

/** The part of a pad's outline that a height can feel, with the widest and the surely covered stretch there. */
interface NearRows {
  readonly rows: readonly PieceRow[];
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
  const near = rows.slice(from, to + 1);
  let [start, end, innerStart, innerEnd] = [0, 0, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const [i, row] of near.entries()) {
    innerStart = Math.max(innerStart, row.start);
    innerEnd = Math.min(innerEnd, row.end);
    const below = near[i + 1];
    if (below !== undefined && row.drop <= drop && drop <= below.drop) {
      const share = (drop - row.drop) / (below.drop - row.drop);
      start = row.start + (below.start - row.start) * share;
      end = row.end + (below.end - row.end) * share;
    }
  }
  return { rows: near, feather, start, end, innerStart: innerStart + feather, innerEnd: innerEnd - feather };
}

/** How far inside the outline a point lies (mm); zero or less outside. Points are tried once round either way. */
function distanceInside(near: NearRows, along: number, girth: number, drop: number, toEnds: number): number {
  let s = along;
  if (s <= near.start) s += girth;
  if (s >= near.end) s -= girth;
  if (s <= near.start || s >= near.end) return 0;
  if (s >= near.innerStart && s <= near.innerEnd) return toEnds;
  let least = toEnds * toEnds;
  for (let i = 0; i + 1 < near.rows.length; i++) {
    const row = near.rows[i] as PieceRow;
    const below = near.rows[i + 1] as PieceRow;
    least = Math.min(
      least,
      squareDistance(s, drop, row.start, row.drop, below.start, below.drop),
      squareDistance(s, drop, row.end, row.drop, below.end, below.drop),
    );
  }
  return Math.sqrt(least);
}

function squareDistance(s: number, drop: number, fromS: number, fromDrop: number, toS: number, toDrop: number): number {
  const runS = toS - fromS;
  const runDrop = toDrop - fromDrop;
  const share = ((s - fromS) * runS + (drop - fromDrop) * runDrop) / (runS * runS + runDrop * runDrop);
  const held = Math.max(0, Math.min(1, share));
  const awayS = s - fromS - held * runS;
  const awayDrop = drop - fromDrop - held * runDrop;
  return awayS * awayS + awayDrop * awayDrop;
}
