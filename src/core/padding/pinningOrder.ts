import type { Pad } from "./pad";
import { type PieceRow, pieceZones } from "./piece";

/**
 * The order of pinning: rounds first, as the ground of everything and the best teacher of what a layer is worth; then the cups in
 * their bra; then everything else from small to large, so that every edge is covered by a larger piece, the outer surface is
 * smooth, and the last pieces are single plies whose width can still be chosen by the tape.
 */
export function pinningOrder(pads: readonly Pad[]): readonly Pad[] {
  return [...pads].sort((a, b) => stage(a) - stage(b) || Math.round(padArea(a) - padArea(b)) || zoneOrder(a) - zoneOrder(b));
}

function stage({ zone }: Pad): number {
  if (zone === "round") return 0;
  return zone === "leftCup" || zone === "rightCup" ? 1 : 2;
}

const zoneOrder = ({ zone }: Pad): number => pieceZones.indexOf(zone);

/** The area a pad covers of the bare form (mm²), by the trapezium rule over its rows. */
export function padArea({ rows }: Pad): number {
  let area = 0;
  for (let i = 1; i < rows.length; i++) {
    const [above, below] = [rows[i - 1] as PieceRow, rows[i] as PieceRow];
    area += ((below.drop - above.drop) * (above.end - above.start + below.end - below.start)) / 2;
  }
  return area;
}
