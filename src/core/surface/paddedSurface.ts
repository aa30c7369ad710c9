import type { SectionAt } from "../body/torsoCurve";
import { quarterLengths, type QuarterLengths } from "../geometry/outline";
import { alongSurface, type Laid } from "../padding/layerThickness";
import { outermostLayer, type Piece } from "../padding/piece";
import { type LevelPoint, outermostAt, type PaddedSection, paddedSection, placeAt } from "./paddedSection";

/**
 * The surface of a torso with the batting pinned on it: a closed section at any depth below the nape (mm). It is the one
 * such surface: pictures, the view in three dimensions and cover panels read it. Between the lines that were read it runs
 * as the bare torso's curve does (`body/torsoCurve`); above the first and below the last it stays as it is there. Without
 * pieces it is the bare form's or a body's own surface.
 */
export interface PaddedSurface {
  readonly bareAt: SectionAt;
  readonly at: (depthBelowNape: number) => PaddedSection;
}

/** The surface of pieces in the order of pinning; its sections have `8 * pointsPerEighth` points. */
export const paddedSurface = (bareAt: SectionAt, pieces: readonly Laid[], pointsPerEighth: number): PaddedSurface => ({
  bareAt,
  at: (depthBelowNape) => paddedSection(bareAt(depthBelowNape), depthBelowNape, pieces, pointsPerEighth),
});

/**
 * Depths from top to bottom (mm), at most a step apart and evenly spaced between those that must be among them. Stops
 * that do not lie between top and bottom are left out.
 */
export function closeDepths(
  top: number,
  bottom: number,
  step: number,
  stops: readonly number[] = [],
): readonly number[] {
  const ends = [top, ...stops.filter((stop) => stop > top && stop < bottom).toSorted((a, b) => a - b), bottom];
  return ends.flatMap((to, i) => {
    const from = ends[i - 1];
    if (from === undefined) return [to];
    const steps = Math.max(1, Math.ceil((to - from) / step));
    return Array.from({ length: steps }, (_, k) => from + ((to - from) * (k + 1)) / steps);
  });
}

/** A place on a torso: how far along the BARE surface from center front (mm, to the wearer's left), and its depth below the nape. */
export interface SurfacePlace {
  readonly arcLength: number;
  readonly depthBelowNape: number;
}

/** The first of some sections, from the top down, that lies at a depth or below it; beneath all of them, the lowest. */
export function firstAtOrBelow(sections: readonly PaddedSection[], depthBelowNape: number): number {
  const found = sections.findIndex((section) => section.depthBelowNape >= depthBelowNape);
  return found === -1 ? sections.length - 1 : found;
}

/** The outermost point at a place, straight between the sections above and below it; outside them it is that of the nearest. */
export function pointAtPlace(
  sections: readonly PaddedSection[],
  { arcLength, depthBelowNape }: SurfacePlace,
): LevelPoint {
  const below = firstAtOrBelow(sections, depthBelowNape);
  const lower = sections[below] as PaddedSection;
  const upper = sections[Math.max(0, below - 1)] as PaddedSection;
  const gap = lower.depthBelowNape - upper.depthBelowNape;
  const share = gap === 0 ? 1 : Math.min(1, Math.max(0, (depthBelowNape - upper.depthBelowNape) / gap));
  const [above, beneath] = [upper, lower].map((section) => outermostAt(section, placeAt(section, arcLength))) as [
    LevelPoint,
    LevelPoint,
  ];
  return { x: above.x * (1 - share) + beneath.x * share, y: above.y * (1 - share) + beneath.y * share };
}

/**
 * One height of a piece where it lies: from where to where along the bare surface, from center front (mm, to the wearer's
 * left; over center back it runs on past half the girth), and how long the four quarters of the bare section are there.
 */
export interface PieceRow {
  readonly depthBelowNape: number;
  readonly start: number;
  readonly end: number;
  readonly quarters: QuarterLengths;
}

/** The outermost layer of a piece row by row, from the top down. */
export const pieceRows = (piece: Piece, bareAt: SectionAt): readonly PieceRow[] =>
  outermostLayer(piece).rows.map((row) => {
    const quarters = quarterLengths(bareAt(row.depthBelowNape));
    return { depthBelowNape: row.depthBelowNape, quarters, ...alongSurface(row, piece.anchor, quarters) };
  });
