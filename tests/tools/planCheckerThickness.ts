import type { FileAnchor, FileLayer, FilePiece, FileRow } from "./planCheckerFile";
import type { Outline } from "./planCheckerOutline";

/**
 * How thick one layer lies at a spot of the bare form: its thickness times min(1, distance to its outline / feather),
 * the distance taken straight in the plane of (distance from the anchor, depth). "along-the-row" looks only sideways
 * at that height and at the top and bottom edges; it exists to measure how much that other reading would differ.
 */
export type DistanceRule = "in-the-plane" | "along-the-row";

/** The lengths of a bare outline that places are told by. */
export type OutlineLengths = Pick<Outline, "girth" | "frontArc">;

/** The thickness of a whole piece at spots told by their distance from center front: its layers add. */
export function pieceThickness(
  { anchor, layers }: FilePiece,
  depth: number,
  lengths: OutlineLengths,
  rule: DistanceRule,
): (arcLength: number) => number {
  const each = layers.map((layer) => layerThickness(layer, depth, lengths.girth, rule));
  return (arcLength) => {
    const place = fromAnchor(arcLength, anchor, lengths);
    return each.reduce((sum, thickness) => sum + thickness(place), 0);
  };
}

/** A distance from center front as one from another anchor, positive to the wearer's left; the form is even. */
export function fromAnchor(arcLength: number, anchor: FileAnchor, { girth, frontArc }: OutlineLengths): number {
  switch (anchor) {
    case "centerFront":
      return arcLength;
    case "centerBack":
      return arcLength >= 0 ? girth / 2 - arcLength : -girth / 2 - arcLength;
    case "leftSide":
      return arcLength - frontArc / 2;
    case "rightSide":
      return arcLength + frontArc / 2;
  }
}

export function layerThickness(
  { thicknessMm, featherMm, wrap, rows }: FileLayer,
  depth: number,
  girth: number,
  rule: DistanceRule,
): (place: number) => number {
  const row = rowAt(rows, depth);
  const top = rows[0];
  const bottom = rows[rows.length - 1];
  if (row === undefined || top === undefined || bottom === undefined) return () => 0;
  const toEnds = Math.min(depth - top.depthBelowNapeMm, bottom.depthBelowNapeMm - depth);
  const feathered = (distance: number) =>
    distance <= 0 ? 0 : thicknessMm * (featherMm > 0 ? Math.min(1, distance / featherMm) : 1);
  if (wrap) return () => feathered(toEnds);

  // An edge further off than the feather is not felt, so it need not be looked at.
  const edges = outlineEdges(
    rows.filter(
      (one, i) => isNear(rows[i + 1] ?? one, depth, featherMm, -1) && isNear(rows[i - 1] ?? one, depth, featherMm, 1),
    ),
  );
  const distance = (place: number): number => {
    if (place <= row.startMm || place >= row.endMm) return 0;
    if (rule === "along-the-row") return Math.min(place - row.startMm, row.endMm - place, toEnds);
    return edges.reduce((least, edge) => Math.min(least, distanceToEdge(place, depth, edge)), toEnds);
  };
  // A place beyond half the girth has a second distance a girth away.
  return (place) => feathered(Math.max(distance(place), distance(place + girth), distance(place - girth)));
}

/** Whether a row lies no further above (-1) or below (1) than a feather, and a little. */
const isNear = (row: FileRow, depth: number, feather: number, side: 1 | -1): boolean =>
  side * (row.depthBelowNapeMm - depth) <= feather + 1;

/** The row at a depth, straight between its neighbours; undefined above the top row and below the bottom row. */
export function rowAt(rows: readonly FileRow[], depth: number): FileRow | undefined {
  for (let i = 1; i < rows.length; i++) {
    const upper = rows[i - 1] as FileRow;
    const lower = rows[i] as FileRow;
    if (depth < upper.depthBelowNapeMm || depth > lower.depthBelowNapeMm) continue;
    const share =
      lower.depthBelowNapeMm === upper.depthBelowNapeMm
        ? 0
        : (depth - upper.depthBelowNapeMm) / (lower.depthBelowNapeMm - upper.depthBelowNapeMm);
    return {
      depthBelowNapeMm: depth,
      startMm: upper.startMm + share * (lower.startMm - upper.startMm),
      endMm: upper.endMm + share * (lower.endMm - upper.endMm),
    };
  }
  return undefined;
}

type Edge = readonly [along0: number, drop0: number, along1: number, drop1: number];

/** The left and right sides of the outline; of its top and bottom the distance is known. */
function outlineEdges(rows: readonly FileRow[]): readonly Edge[] {
  return rows.slice(1).flatMap((below, i): readonly Edge[] => {
    const above = rows[i] as FileRow;
    return [
      [above.startMm, above.depthBelowNapeMm, below.startMm, below.depthBelowNapeMm],
      [above.endMm, above.depthBelowNapeMm, below.endMm, below.depthBelowNapeMm],
    ];
  });
}

function distanceToEdge(arcLength: number, depthBelowNape: number, [along0, drop0, along1, drop1]: Edge): number {
  const dx = along1 - along0;
  const dy = drop1 - drop0;
  const size = dx * dx + dy * dy;
  const share =
    size === 0 ? 0 : Math.max(0, Math.min(1, ((arcLength - along0) * dx + (depthBelowNape - drop0) * dy) / size));
  return Math.hypot(arcLength - along0 - share * dx, depthBelowNape - drop0 - share * dy);
}
