import type { HalvesSection } from "../../../src/core/body/section";
import { sectionOutline } from "../../../src/core/geometry/outline";
import type { Pad } from "../../../src/core/padding/pad";
import type { PieceRow, PieceZone } from "../../../src/core/padding/piece";
import type { Station } from "../../../src/core/padding/stack";
import { formSurface } from "../../../src/core/padding/surface";
import { mm, ratio } from "../../../src/core/units";

/** A form that is the same circle from the bust to the full hip (mm): everything on it can be reckoned by hand. */
export const radius = 120;
export const quarter = (Math.PI / 2) * radius;
export const drops = [200, 270, 380, 480, 580] as const;

const circle: HalvesSection = {
  leftBreadth: mm(radius),
  rightBreadth: mm(radius),
  frontDepth: mm(radius),
  backDepth: mm(radius),
  frontExponent: ratio(2),
  backExponent: ratio(2),
};

export const surface = formSurface(drops, () => circle);

export const stationAt = (drop: number): Station => ({ drop, outline: sectionOutline(circle, 24) });

/** A pad of one ply with straight ends between two heights. */
export function pad(
  zone: PieceZone,
  [start, end]: readonly [number, number],
  [top, bottom]: readonly [number, number],
  thickness = 6,
  feather = 30,
): Pad {
  const rows = [top, (top + bottom) / 2, bottom].map(
    (drop): PieceRow => ({ drop: mm(drop), start: mm(start), end: mm(end) }),
  );
  return { zone, batting: "building", plies: 1, thickness: mm(thickness), feather: mm(feather), rows };
}

export const round = (heights: readonly [number, number], thickness = 6, feather = 30): Pad =>
  pad("round", [-2 * quarter, 2 * quarter], heights, thickness, feather);

/** What a pad is made of, for checks of its rows. */
export const rowWidths = ({ rows }: Pad): readonly number[] => rows.map(({ start, end }) => end - start);
export const rowGaps = ({ rows }: Pad): readonly number[] =>
  rows.slice(1).map(({ drop }, i) => drop - (rows[i]?.drop ?? 0));
