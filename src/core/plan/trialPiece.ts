import { featherFor } from "../padding/hill";
import type { Piece, PieceRow } from "../padding/piece";
import { type Millimetres, mm } from "../units";
import type { Basis } from "./basis";

/**
 * The trial: one layer wrapped once round the form at the waist, wide enough that the tape lies on its full thickness, to find out
 * what a layer is worth before anything is cut for good.
 */
export function trialPiece({ surface, drops }: Basis, layerThickness: Millimetres): Piece {
  const feather = featherFor(layerThickness);
  const half = feather + trialMargin;
  const [top, bottom] = [drops.waist - half, drops.waist + half];
  const row = surface.drops.reduce(
    (nearest, drop, i) =>
      Math.abs(drop - drops.waist) < Math.abs((surface.drops[nearest] as number) - drops.waist) ? i : nearest,
    0,
  );
  const halfGirth = (surface.frontQuarter[row] as number) + (surface.backQuarter[row] as number);
  const rows = rowDrops(top, bottom).map(
    (drop): PieceRow => ({ drop: mm(drop), start: mm(-halfGirth), end: mm(halfGirth) }),
  );
  return {
    id: "trial",
    order: 1,
    zone: "round",
    batting: "building",
    plies: 1,
    thickness: layerThickness,
    feather: mm(feather),
    rows,
    cut: {
      shape: "strip",
      length: mm(2 * halfGirth),
      width: mm(2 * half),
      widths: rows.map(({ drop }) => ({ belowTop: mm(drop - top), left: mm(halfGirth), right: mm(halfGirth) })),
    },
  };
}

/** Above and below the waist the trial keeps its full thickness for half the width of a tape and a bad aim (mm). */
const trialMargin = 25;

const rowDrops = (top: number, bottom: number): readonly number[] => {
  const steps = Math.ceil((bottom - top) / 16);
  return Array.from({ length: steps + 1 }, (_, i) => top + ((bottom - top) * i) / steps);
};
