import type { Outline } from "../geometry/outline";
import { featherLength, type Gap, levelGaps } from "./levelGaps";
import type { ShapingProblem } from "./shapingProblem";

/** Where the discs of a cup pad lie: their center on the bare surface from center front, its depth below the nape, and their radii (mm), largest first. */
export interface CupPlace {
  readonly fromFront: number;
  readonly depth: number;
  readonly radii: readonly number[];
}

export interface CupPlaces {
  readonly left: CupPlace;
  readonly right: CupPlace;
}

/** Each disc is this much (mm) less in radius than the one beneath it. */
const discStep = 8;

const mostDiscs = 3;

/** The smallest disc keeps this radius at full thickness (mm): a square of 40 mm fits into it. */
const smallestFull = 28.5;

/** Radius of the largest disc (mm): a wire of a bra is about 90 to 150 mm across. Common practice, no source. */
const largestRadius = 75;

/** The places of the discs on both sides; no radii where the cup has no room for a disc. */
export function cupPlaces({ levels, apex }: ShapingProblem): CupPlaces {
  const bust = levels.findIndex(({ name }) => name === "bust");
  const { outline, depth } = levels[bust] as ShapingProblem["levels"][number];
  const below = levelGaps(levels.map((level) => level.depth))[bust + 1] as Gap;
  const quarter = outline.quarters.leftFront;
  const fromFront = Math.min(surfaceTo(outline, apex.apart.value / 2), 0.75 * quarter);
  const place = (apexDepth: number): CupPlace => {
    const toUnderbust = depth + below.length - below.margin - apexDepth;
    const radius = Math.min(largestRadius, toUnderbust, fromFront, quarter - fromFront);
    const radii = Array.from({ length: mostDiscs }, (_, i) => radius - discStep * i);
    return { fromFront, depth: apexDepth, radii: radii.filter((one) => one - featherLength >= smallestFull) };
  };
  return { left: place(apex.leftDepth.value), right: place(apex.rightDepth.value) };
}

/** Way along the bare front from center front to where the outline is this far to the side (mm). */
function surfaceTo({ count, x, arcLength, quarters }: Outline, distance: number): number {
  for (let i = count / 2; i < count; i++) {
    const next = x[i] as number;
    if (next < distance) continue;
    const before = x[i - 1] as number;
    const [from, to] = [arcLength[i - 1] as number, arcLength[i] as number];
    return from + ((to - from) * (distance - before)) / (next - before || 1);
  }
  return quarters.leftFront;
}
