import type { Section } from "../body/section";
import { girthOf, type Outline, type QuarterLengths, sectionOutline } from "../geometry/outline";
import { type Laid, piecesThickness } from "../padding/layerThickness";
import { paddedPoints, tapeQuarters } from "../tape/tape";

/**
 * A torso cut level at one depth below the nape, with the batting that lies on it. Millimeters, in the level plane: x to
 * the wearer's left, y to the front, the bare side seams on y = 0 and the centers on x = 0. Batting stands straight out
 * from the bare surface, compressed as under a snug tape; a piece lies on those before it in the order of pinning. The
 * points run as those of the bare outline do: from center back over the right side, center front and the left side, each
 * quarter with the same number; the ring is closed, its first point is not repeated, and it never crosses itself, because
 * the normals of a convex curve do not meet outside it. Without pieces it is the bare form, or a body.
 */
export interface PaddedSection {
  readonly depthBelowNape: number;
  readonly bare: Outline;
  /** What each piece adds at each point of the bare outline (mm), in the order of pinning. */
  readonly added: readonly Float64Array[];
  /** All pieces together at each point (mm). */
  readonly thickness: Float64Array;
  /** The outermost surface as flat coordinates [x0, y0, x1, y1, …], a point for each of the bare outline. */
  readonly points: Float64Array;
}

/** The section with pieces on it, drawn with `8 * pointsPerEighth` points. */
export function paddedSection(
  section: Section,
  depthBelowNape: number,
  pieces: readonly Laid[],
  pointsPerEighth: number,
): PaddedSection {
  const bare = sectionOutline(section, pointsPerEighth);
  const added = pieces.map((piece) => piecesThickness([piece], { depth: depthBelowNape, outline: bare }));
  return withAdded(depthBelowNape, bare, added);
}

/** The same section with only the first so many of its pieces on: none of them is the bare form. */
export const withFirst = ({ depthBelowNape, bare, added }: PaddedSection, count: number): PaddedSection =>
  withAdded(depthBelowNape, bare, added.slice(0, count));

function withAdded(depthBelowNape: number, bare: Outline, added: readonly Float64Array[]): PaddedSection {
  const thickness = new Float64Array(bare.count);
  for (const own of added) {
    for (let i = 0; i < thickness.length; i++) thickness[i] = (thickness[i] as number) + (own[i] as number);
  }
  return { depthBelowNape, bare, added, thickness, points: paddedPoints(bare, thickness) };
}

/** What a taut tape reads around the section, in its four quarters (mm). */
export const tautQuarters = ({ bare, thickness }: PaddedSection): QuarterLengths => tapeQuarters(bare, thickness);

/** Between which points of a section a place lies, and how far from the first on the way to the second (0 to 1). */
export interface SectionPlace {
  readonly from: number;
  readonly to: number;
  readonly share: number;
}

/**
 * The place at a signed distance along the BARE surface from center front (mm, positive to the wearer's left). Any number
 * of turns around the torso is the same place; a section without extent has one place only.
 */
export function placeAt(section: PaddedSection, arcLength: number): SectionPlace {
  const { arcLength: ways, count, quarters } = section.bare;
  const girth = girthOf(quarters);
  const first = ways[0] as number;
  const turned = girth === 0 ? first : arcLength - girth * Math.floor((arcLength - first) / girth);
  let [from, beyond] = [0, count];
  while (beyond - from > 1) {
    const middle = (from + beyond) >> 1;
    if ((ways[middle] as number) <= turned) from = middle;
    else beyond = middle;
  }
  const start = ways[from] as number;
  const end = beyond === count ? first + girth : (ways[beyond] as number);
  return { from, to: beyond % count, share: end > start ? (turned - start) / (end - start) : 0 };
}

/** A point of the level plane (mm). */
export interface LevelPoint {
  readonly x: number;
  readonly y: number;
}

/** The outermost point of a section at a place, straight between its neighbors. */
export function outermostAt({ points }: PaddedSection, { from, to, share }: SectionPlace): LevelPoint {
  const mix = (axis: 0 | 1) =>
    (points[2 * from + axis] as number) * (1 - share) + (points[2 * to + axis] as number) * share;
  return { x: mix(0), y: mix(1) };
}
