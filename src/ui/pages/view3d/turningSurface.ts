import type { SectionAt } from "../../../core/body/torsoCurve";
import type { Laid } from "../../../core/padding/layerThickness";
import { type PaddedSection, withFirst } from "../../../core/surface/paddedSection";
import { closeDepths, paddedSurface } from "../../../core/surface/paddedSurface";

/** A section as it stands with some of its pieces on, and which piece lies outermost at each of its points (0: none). */
export interface StandingRing {
  readonly section: PaddedSection;
  readonly outermost: Uint8Array;
  /** How thick the outermost piece is there (mm), and which piece it lies on. */
  readonly own: Float64Array;
  readonly beneath: Uint8Array;
}

const sectionStep = 9;
const pointsPerEighth = 9;

/**
 * Level sections of a torso from top to bottom, at most nine millimeters apart, with one on each of the stops between, so
 * that what is drawn at a level is the level's own section. Pieces are in the order of pinning.
 */
export function turningSections(
  bareAt: SectionAt,
  pieces: readonly Laid[],
  { top, bottom, stops = [] }: { readonly top: number; readonly bottom: number; readonly stops?: readonly number[] },
): readonly PaddedSection[] {
  const surface = paddedSurface(bareAt, pieces, pointsPerEighth);
  return closeDepths(top, bottom, sectionStep, stops).map((depth) => surface.at(depth));
}

/** The sections with the first so many pieces on. */
export const standing = (sections: readonly PaddedSection[], count: number): readonly StandingRing[] =>
  sections.map((whole) => {
    const section = withFirst(whole, count);
    const own = new Float64Array(section.bare.count);
    const outermost = new Uint8Array(section.bare.count);
    const beneath = new Uint8Array(section.bare.count);
    for (const [i, added] of section.added.entries()) {
      for (let at = 0; at < added.length; at++) {
        const thickness = added[at] ?? 0;
        if (thickness <= 0) continue;
        beneath[at] = outermost[at] ?? 0;
        outermost[at] = i + 1;
        own[at] = thickness;
      }
    }
    return { section, outermost, own, beneath };
  });

export const seenRing = ({ section: { points, depthBelowNape } }: StandingRing, look: Look): readonly SeenPoint[] =>
  Array.from({ length: points.length / 2 }, (_, at) =>
    look(points[2 * at] ?? 0, points[2 * at + 1] ?? 0, depthBelowNape),
  );

/** A lamp above the viewer's left shoulder, of length one, and some light from everywhere. */
const lamp = { across: -0.45, down: -0.4, near: 0.8 } as const;

/** How much of its light falls on a surface that looks so, from 0 to 1. */
export const lit = ({ across, down, near }: SeenPoint): number =>
  Math.max(0, Math.min(1, 0.15 + across * lamp.across + down * lamp.down + near * lamp.near));

/**
 * From where the figure is looked at. The turn is in degrees, 0 from the front; as it grows the viewer walks round to the
 * wearer's left side (90), her back (180) and her right side (270). The tip is in degrees above level.
 */
export interface TurningView {
  readonly turn: number;
  readonly tip: number;
}

export const frontView: TurningView = { turn: 0, tip: 12 };

/** Neither the pole from below nor the crown from above has anything to say. */
const [lowestTip, highestTip] = [-20, 50] as const;

export const turned = ({ turn, tip }: TurningView, by: number, tipBy = 0): TurningView => ({
  turn: wrapped(turn + by),
  tip: Math.max(lowestTip, Math.min(highestTip, tip + tipBy)),
});

/** The same direction as an angle from 0 up to, but not including, a whole turn. */
export const wrapped = (degrees: number): number => ((degrees % 360) + 360) % 360;

/**
 * A place as the viewer sees it: across the page to the right, down the page, and how near (larger is nearer). Everything
 * in millimetres, without perspective, so that a breadth on the page is the breadth of the figure.
 */
export interface SeenPoint {
  readonly across: number;
  readonly down: number;
  readonly near: number;
}

export type Look = (x: number, y: number, depthBelowNape: number) => SeenPoint;

export function lookFrom({ turn, tip }: TurningView): Look {
  const [sideways, ahead] = [Math.sin(radiansOf(wrapped(turn))), Math.cos(radiansOf(wrapped(turn)))];
  const [rise, level] = [Math.sin(radiansOf(tip)), Math.cos(radiansOf(tip))];
  return (x, y, depthBelowNape) => {
    const toward = y * ahead + x * sideways;
    return {
      across: x * ahead - y * sideways,
      down: depthBelowNape * level + toward * rise,
      near: toward * level - depthBelowNape * rise,
    };
  };
}

const radiansOf = (degrees: number): number => (degrees * Math.PI) / 180;
