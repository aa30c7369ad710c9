import { pinnableWidth } from "../tolerances";
import { mm } from "../units";
import { contourHeight, featherFor, type Slab } from "./hill";
import type { Pad } from "./pad";
import type { PieceRow } from "./piece";

/**
 * The filling of one cup of the bra: discs of shrinking size on the apex, a dome whose height over the bare form is the
 * crown at the apex and falls to nothing at the cup's radius as 1 − (r/R)². The centre is a place on the bare form: signed
 * way from centre front along the surface (positive to the wearer's left) and drop below the nape.
 */
export interface Cup {
  readonly zone: "leftCup" | "rightCup";
  readonly along: number;
  readonly drop: number;
  readonly radius: number;
  readonly crown: number;
  readonly trim: number;
}

/**
 * Cuts a cup into discs, the smallest first. A disc that comes out smaller than a hand can pin is cut at that size and pulled
 * thin over a longer way instead, so that it adds as little as the smaller disc would; one that would add next to nothing is left out.
 */
export function cupPads(cup: Cup, stack: readonly Slab[]): readonly Pad[] {
  return [...stack].reverse().flatMap((slab) => {
    const height = contourHeight(slab);
    if (cup.crown <= height) return [];
    const wished = cup.radius * Math.sqrt(1 - height / cup.crown) * (1 + cup.trim);
    if (wished < leastShare * smallestRadius) return [];
    const radius = Math.max(smallestRadius, wished);
    const thickness = slab.to - slab.from;
    const feather = featherFor(thickness) * (radius / wished) ** 2;
    return [
      {
        zone: cup.zone,
        batting: slab.batting,
        plies: slab.plies,
        thickness: mm(thickness),
        feather: mm(feather),
        rows: discRows(cup, radius),
      },
    ];
  });
}

/** A disc must be a little larger than the narrowest piece for its rows to be wide enough from top to bottom. */
const smallestRadius = 0.73 * pinnableWidth;

/** Below this share of the smallest radius a disc would be pulled to less than a sixth of its thickness. */
const leastShare = 0.4;

/** Rows of a disc, none narrower than a hand can pin: its top and bottom are cut straight there. */
function discRows({ along, drop }: Cup, radius: number): readonly PieceRow[] {
  const steps = 2 * Math.ceil(radius / 8);
  const half = Math.acos((pinnableWidth + 1) / 2 / radius);
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = half * ((2 * i) / steps - 1);
    const reach = radius * Math.cos(angle);
    return { drop: mm(drop + radius * Math.sin(angle)), start: mm(along - reach), end: mm(along + reach) };
  });
}
