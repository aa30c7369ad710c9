import type { FilePiece, FileRow } from "./planCheckerFile";

/**
 * How thick one piece lies at a spot of the bare form: its thickness times min(1, distance to its outline / feather),
 * the distance taken straight in the plane of (distance along the surface, drop). "along-the-row" looks only sideways
 * at that height and at the top and bottom edges; it exists to measure how much that other reading would differ.
 */
export type DistanceRule = "in-the-plane" | "along-the-row";

/** A row this close to the whole girth is a round: only its top and bottom edges are outline. */
const roundSlackMm = 1;

export function pieceThickness(
  piece: FilePiece,
  drop: number,
  girth: number,
  rule: DistanceRule,
): (along: number) => number {
  const row = rowAt(piece.rows, drop);
  const top = piece.rows[0];
  const bottom = piece.rows[piece.rows.length - 1];
  if (row === undefined || top === undefined || bottom === undefined) return () => 0;
  const toEnds = Math.min(drop - top.dropMm, bottom.dropMm - drop);
  const isRound = row.endMm - row.startMm >= girth - roundSlackMm;
  const feathered = (distance: number) => piece.thicknessMm * Math.max(0, Math.min(1, distance / piece.featherMm));
  if (isRound) return () => feathered(toEnds);

  const edges = outlineEdges(piece.rows);
  const distance = (along: number): number => {
    if (along <= row.startMm || along >= row.endMm) return 0;
    if (rule === "along-the-row") return Math.min(along - row.startMm, row.endMm - along, toEnds);
    return edges.reduce((least, edge) => Math.min(least, distanceToEdge(along, drop, edge)), Number.POSITIVE_INFINITY);
  };
  const zero = anchorAlong(piece, girth);
  // The same spot of the form has other distances, a girth away either way.
  return (along) =>
    feathered(Math.max(distance(along - zero), distance(along - zero + girth), distance(along - zero - girth)));
}

/** Where the rows of a piece are counted from, seen from center front: half around for what is anchored at center back. */
export const anchorAlong = ({ anchor }: FilePiece, girth: number): number => (anchor === "centerBack" ? girth / 2 : 0);

/** The row at a drop, straight between its neighbours; undefined above the top row and below the bottom row. */
export function rowAt(rows: readonly FileRow[], drop: number): FileRow | undefined {
  for (let i = 1; i < rows.length; i++) {
    const upper = rows[i - 1] as FileRow;
    const lower = rows[i] as FileRow;
    if (drop < upper.dropMm || drop > lower.dropMm) continue;
    const share = lower.dropMm === upper.dropMm ? 0 : (drop - upper.dropMm) / (lower.dropMm - upper.dropMm);
    return {
      dropMm: drop,
      startMm: upper.startMm + share * (lower.startMm - upper.startMm),
      endMm: upper.endMm + share * (lower.endMm - upper.endMm),
    };
  }
  return undefined;
}

type Edge = readonly [along0: number, drop0: number, along1: number, drop1: number];

function outlineEdges(rows: readonly FileRow[]): readonly Edge[] {
  const corners = [
    ...rows.map((row) => [row.startMm, row.dropMm] as const),
    ...rows.map((row) => [row.endMm, row.dropMm] as const).reverse(),
  ];
  return corners.map(([along0, drop0], i) => {
    const [along1, drop1] = corners[(i + 1) % corners.length] as readonly [number, number];
    return [along0, drop0, along1, drop1];
  });
}

function distanceToEdge(along: number, drop: number, [along0, drop0, along1, drop1]: Edge): number {
  const dx = along1 - along0;
  const dy = drop1 - drop0;
  const size = dx * dx + dy * dy;
  const share = size === 0 ? 0 : Math.max(0, Math.min(1, ((along - along0) * dx + (drop - drop0) * dy) / size));
  return Math.hypot(along - along0 - share * dx, drop - drop0 - share * dy);
}
