import { pinnableWidth } from "../tolerances";
import { mm } from "../units";
import { contourHeight, featherFor, type Slab } from "./hill";
import type { Pad } from "./pad";
import type { PieceRow } from "./piece";
import type { Surface } from "./surface";

/**
 * A ridge of padding over one side seam, where the body was measured to be broader than the form by more than the even layer
 * gives. It is highest at the seam and falls to nothing at centre front and back as cos² of the way.
 */
export interface SideRidge {
  readonly zone: "leftSide" | "rightSide";
  readonly crown: (drop: number) => number;
}

export function sidePads(ridge: SideRidge, surface: Surface, stack: readonly Slab[]): readonly Pad[] {
  return [...stack].reverse().flatMap((slab) => {
    const height = contourHeight(slab);
    const thickness = slab.to - slab.from;
    return runs(surface.drops.map((drop, row) => sideRow(ridge, surface, height, drop, row))).map((rows) => ({
      zone: ridge.zone,
      batting: slab.batting,
      plies: slab.plies,
      thickness: mm(thickness),
      feather: mm(featherFor(thickness)),
      rows,
    }));
  });
}

function sideRow(ridge: SideRidge, surface: Surface, height: number, drop: number, row: number): PieceRow | null {
  const crown = ridge.crown(drop);
  if (crown <= height) return null;
  const way = (2 / Math.PI) * Math.acos(Math.sqrt(height / crown));
  const [front, back] = [surface.frontQuarter[row] as number, surface.backQuarter[row] as number];
  const [towardsFront, towardsBack] = [front - way * front, front + way * back];
  if (towardsBack - towardsFront < pinnableWidth) return null;
  return ridge.zone === "leftSide"
    ? { drop: mm(drop), start: mm(towardsFront), end: mm(towardsBack) }
    : { drop: mm(drop), start: mm(-towardsBack), end: mm(-towardsFront) };
}

function runs(rows: readonly (PieceRow | null)[]): readonly (readonly PieceRow[])[] {
  const found: PieceRow[][] = [];
  for (const [i, row] of rows.entries()) {
    if (row === null) continue;
    if (i === 0 || rows[i - 1] === null) found.push([]);
    (found[found.length - 1] as PieceRow[]).push(row);
  }
  return found.filter(
    (run) => run.length > 1 && (run[run.length - 1] as PieceRow).drop - (run[0] as PieceRow).drop >= pinnableWidth,
  );
}
