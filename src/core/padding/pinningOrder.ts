import type { Pad } from "./pad";
import { type PieceRow, type PieceZone, pieceZones } from "./piece";

/**
 * The order of pinning: rounds first, as the ground of everything and the best teacher of what a layer is worth; then the cups in
 * their bra; then everything else from small to large, so that every edge is covered by a larger piece and the outer surface is
 * smooth. The outermost piece in front, behind and in each cup waits for the end: its width is still chosen by the tape.
 */
export function pinningOrder(pads: readonly Pad[]): readonly Pad[] {
  const outermost = new Set(tapeShapedZones.map((zone) => largest(pads.filter((pad) => pad.zone === zone))));
  const stage = (pad: Pad): number => {
    if (outermost.has(pad)) return 3;
    if (pad.zone === "round") return 0;
    return isCup(pad) ? 1 : 2;
  };
  const within = (pad: Pad): number => (isCup(pad) ? 0 : 1);
  return [...pads].sort(
    (a, b) =>
      stage(a) - stage(b) ||
      within(a) - within(b) ||
      Math.round(padArea(a) - padArea(b)) ||
      zoneOrder(a) - zoneOrder(b),
  );
}

/** Zones whose outermost piece is shaped by the tape; rounds and ridges are the ground. */
export const tapeShapedZones: readonly PieceZone[] = ["leftCup", "rightCup", "back", "front"];

const isCup = ({ zone }: Pad): boolean => zone === "leftCup" || zone === "rightCup";

const largest = (pads: readonly Pad[]): Pad | undefined =>
  pads.reduce<Pad | undefined>(
    (found, pad) => (found === undefined || padArea(pad) >= padArea(found) ? pad : found),
    undefined,
  );

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
