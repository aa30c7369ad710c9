import type { Outline, QuarterLengths } from "../geometry/outline";
import type { Anchor, Layer, LayerRow } from "./layer";

/** A height at which layers are looked at: a depth below the nape and the bare form's outline there. */
export interface LevelOutline {
  readonly depth: number;
  readonly outline: Outline;
}

/** Layers with the line that their distances begin at. */
export interface Laid {
  readonly anchor: Anchor;
  readonly layers: readonly Layer[];
}

/** The thickness (mm) of all layers of pieces together at each point of the bare form's outline at one height. */
export function piecesThickness(pieces: readonly Laid[], level: LevelOutline): Float64Array {
  const total = new Float64Array(level.outline.count);
  for (const piece of pieces) addPiece(total, piece, level);
  return total;
}

/** Adds all layers of a piece; says whether any reaches this height. */
export function addPiece(total: Float64Array, { anchor, layers }: Laid, level: LevelOutline): boolean {
  let reaches = false;
  for (const layer of layers) reaches = addLayer(total, layer, anchor, level) || reaches;
  return reaches;
}

/**
 * Adds one layer to the thickness at each point of an outline; says whether it reaches this height. (Given one for its
 * thickness, it counts layers.)
 */
export function addLayer(
  total: Float64Array,
  { rows, feather, wrap, thickness: own }: Layer,
  anchor: Anchor,
  { depth, outline }: LevelOutline,
  thickness: number = own,
): boolean {
  const top = rows[0] as LayerRow;
  const bottom = rows[rows.length - 1] as LayerRow;
  if (depth <= top.depthBelowNape || depth >= bottom.depthBelowNape) return false;
  const toEnds = Math.min(depth - top.depthBelowNape, bottom.depthBelowNape - depth);
  const inside = thickness * full(toEnds, feather);
  if (wrap) {
    for (let i = 0; i < total.length; i++) total[i] = (total[i] as number) + inside;
    return true;
  }
  const near = rowsNear(rows, depth, feather);
  const { leftFront, leftBack, rightFront, rightBack } = outline.quarters;
  const girth = leftFront + leftBack + rightFront + rightBack;
  for (let i = 0; i < total.length; i++) {
    let s = fromAnchor(outline.arcLength[i] as number, anchor, outline);
    if (s <= near.start) s += girth;
    if (s >= near.end) s -= girth;
    if (s <= near.start || s >= near.end) continue;
    const isInside = s >= near.innerStart && s <= near.innerEnd;
    total[i] =
      (total[i] as number) + (isInside ? inside : thickness * full(nearestEdge(near, s, depth, toEnds), feather));
  }
  return true;
}

const full = (distance: number, feather: number): number => (distance >= feather ? 1 : distance / feather);

/** A distance from center front along the bare surface as one from another line, positive to the wearer's left. */
export function fromAnchor(arcLength: number, anchor: Anchor, { quarters }: Pick<Outline, "quarters">): number {
  switch (anchor) {
    case "centerFront":
      return arcLength;
    case "centerBack":
      return arcLength >= 0
        ? quarters.leftFront + quarters.leftBack - arcLength
        : -(quarters.rightFront + quarters.rightBack + arcLength);
    case "leftSide":
      return arcLength - quarters.leftFront;
    case "rightSide":
      return arcLength + quarters.rightFront;
  }
}

/** A stretch told from an anchor as one along the surface from center front; over center back it runs past half the girth. */
export function alongSurface(
  { start, end }: Pick<LayerRow, "start" | "end">,
  anchor: Anchor,
  { leftFront, leftBack, rightFront }: QuarterLengths,
): { readonly start: number; readonly end: number } {
  switch (anchor) {
    case "centerFront":
      return { start, end };
    case "centerBack":
      return { start: leftFront + leftBack - end, end: leftFront + leftBack - start };
    case "leftSide":
      return { start: start + leftFront, end: end + leftFront };
    case "rightSide":
      return { start: start - rightFront, end: end - rightFront };
  }
}

/** The rows whose edges a height can feel, the stretch covered there, and the part of it that feels neither side. */
interface NearRows {
  readonly rows: readonly LayerRow[];
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
  readonly innerStart: number;
  readonly innerEnd: number;
}

function rowsNear(rows: readonly LayerRow[], depth: number, feather: number): NearRows {
  let from = 0;
  while (from + 2 < rows.length && (rows[from + 1] as LayerRow).depthBelowNape < depth - feather) from++;
  let to = rows.length - 1;
  while (to - 1 > from && (rows[to - 1] as LayerRow).depthBelowNape > depth + feather) to--;
  let at = from;
  let innerStart = Number.NEGATIVE_INFINITY;
  let innerEnd = Number.POSITIVE_INFINITY;
  for (let i = from; i <= to; i++) {
    const row = rows[i] as LayerRow;
    innerStart = Math.max(innerStart, row.start);
    innerEnd = Math.min(innerEnd, row.end);
    if (row.depthBelowNape <= depth && i < to) at = i;
  }
  const upper = rows[at] as LayerRow;
  const lower = rows[at + 1] as LayerRow;
  const share = (depth - upper.depthBelowNape) / (lower.depthBelowNape - upper.depthBelowNape);
  return {
    rows,
    from,
    to,
    start: upper.start + (lower.start - upper.start) * share,
    end: upper.end + (lower.end - upper.end) * share,
    innerStart: innerStart + feather,
    innerEnd: innerEnd - feather,
  };
}

/** How far a place inside is from the outline; of the top and bottom edge that is known already. */
function nearestEdge({ rows, from, to }: NearRows, s: number, depth: number, toEnds: number): number {
  let least = toEnds * toEnds;
  for (let i = from; i < to; i++) {
    const upper = rows[i] as LayerRow;
    const lower = rows[i + 1] as LayerRow;
    least = Math.min(
      least,
      squareDistance(s, depth, upper.start, upper.depthBelowNape, lower.start, lower.depthBelowNape),
      squareDistance(s, depth, upper.end, upper.depthBelowNape, lower.end, lower.depthBelowNape),
    );
  }
  return Math.sqrt(least);
}

/** The square of the distance from a place to a straight edge. It is asked very often, so it makes no lists. */
function squareDistance(s: number, depth: number, s0: number, d0: number, s1: number, d1: number): number {
  const runS = s1 - s0;
  const runDepth = d1 - d0;
  const share = ((s - s0) * runS + (depth - d0) * runDepth) / (runS * runS + runDepth * runDepth);
  const held = Math.max(0, Math.min(1, share));
  const awayS = s - s0 - held * runS;
  const awayDepth = depth - d0 - held * runDepth;
  return awayS * awayS + awayDepth * awayDepth;
}
