import type { Pad } from "./pad";
import type { PieceRow } from "./piece";

/**
 * The order of pinning: rounds that pass under the bra first, then the cups, then everything else from small to large, so
 * that every edge is covered by a larger piece and the outer surface is smooth, and last the rounds that lie below the bra.
 */
export function pinningOrder(pads: readonly Pad[], bustDrop: number): readonly Pad[] {
  const stage = (pad: Pad): number => {
    if (pad.zone === "round") return (pad.rows[0] as PieceRow).drop < bustDrop ? 0 : 3;
    return pad.zone === "leftCup" || pad.zone === "rightCup" ? 1 : 2;
  };
  return [...pads].sort((a, b) => stage(a) - stage(b) || padArea(a) - padArea(b));
}

/** The area a pad covers of the bare form (mm²), by the trapezium rule over its rows. */
export function padArea({ rows }: Pad): number {
  let area = 0;
  for (let i = 1; i < rows.length; i++) {
    const [above, below] = [rows[i - 1] as PieceRow, rows[i] as PieceRow];
    area += ((below.drop - above.drop) * (above.end - above.start + below.end - below.start)) / 2;
  }
  return area;
}
