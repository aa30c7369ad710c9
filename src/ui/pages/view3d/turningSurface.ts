import type { SectionAt } from "../../../core/body/torsoCurve";
import { type Outline, sectionOutline } from "../../../core/geometry/outline";
import { piecesThickness } from "../../../core/padding/layerThickness";
import type { Piece } from "../../../core/padding/piece";

/**
 * A form or a body as rings at many heights, each with the same number of points, in the same order round: from centre
 * back over the right side, centre front and the left side. Millimetres; x to the wearer's left, y to the front, and the
 * height as the depth below the nape. A ring stands on every level that is asked for, so that what is drawn there is the
 * level's own section.
 */
export interface TurningRing {
  readonly depthBelowNape: number;
  readonly outline: Outline;
  /** What each piece adds at each point (mm), in the order of pinning; no pieces, no lists. */
  readonly pieceDepths: readonly Float64Array[];
}

/** A ring as it stands with some of the pieces on: where each point is, and which piece lies outermost there (0: none). */
export interface StandingRing {
  readonly depthBelowNape: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly outermost: Uint8Array;
  /** How thick the outermost piece is there (mm), and which piece it lies on. */
  readonly own: Float64Array;
  readonly beneath: Uint8Array;
}

const ringStep = 9;
const pointsPerPart = 9;

/** Every ring's depth from top to bottom, at most nine millimetres apart, with a ring on each of the stops between. */
export function ringDepths(top: number, bottom: number, stops: readonly number[]): readonly number[] {
  const ends = [top, ...stops.filter((stop) => stop > top && stop < bottom).toSorted((a, b) => a - b), bottom];
  return ends.flatMap((to, i) => {
    const from = ends[i - 1];
    if (from === undefined) return [to];
    const steps = Math.max(1, Math.ceil((to - from) / ringStep));
    return Array.from({ length: steps }, (_, step) => from + ((to - from) * (step + 1)) / steps);
  });
}

export function turningSurface(
  sectionAt: SectionAt,
  pieces: readonly Piece[],
  depths: readonly number[],
): readonly TurningRing[] {
  const inOrder = pieces.toSorted((a, b) => a.order - b.order);
  return depths.map((depthBelowNape) => {
    const outline = sectionOutline(sectionAt(depthBelowNape), pointsPerPart);
    return {
      depthBelowNape,
      outline,
      pieceDepths: inOrder.map((piece) => piecesThickness([piece], { depth: depthBelowNape, outline })),
    };
  });
}

/** The rings with the first so many pieces on. */
export const standing = (surface: readonly TurningRing[], count: number): readonly StandingRing[] =>
  surface.map(({ depthBelowNape, outline, pieceDepths }) => {
    const depth = new Float64Array(outline.count);
    const own = new Float64Array(outline.count);
    const outermost = new Uint8Array(outline.count);
    const beneath = new Uint8Array(outline.count);
    for (const [i, depths] of pieceDepths.slice(0, count).entries()) {
      for (let at = 0; at < depth.length; at++) {
        const added = depths[at] ?? 0;
        if (added <= 0) continue;
        depth[at] = (depth[at] ?? 0) + added;
        beneath[at] = outermost[at] ?? 0;
        outermost[at] = i + 1;
        own[at] = added;
      }
    }
    const raised = (bare: Float64Array, normal: Float64Array): Float64Array =>
      bare.map((value, at) => value + (normal[at] ?? 0) * (depth[at] ?? 0));
    return {
      depthBelowNape,
      x: raised(outline.x, outline.normalX),
      y: raised(outline.y, outline.normalY),
      outermost,
      own,
      beneath,
    };
  });

/** A face of a surface between two rings that looks towards the viewer, with what lies on it and how it is lit. */
export interface Face {
  readonly corners: readonly [SeenPoint, SeenPoint, SeenPoint, SeenPoint];
  readonly near: number;
  /** Light on it, from 0 (turned away from the lamp) to 1. */
  readonly light: number;
  /** The outermost piece, by its order, or 0 for the bare form. */
  readonly piece: number;
  /** How thick that piece is here (mm), and which piece it lies on. */
  readonly own: number;
  readonly beneath: number;
}

/** The faces towards the viewer, the furthest first, so that nearer ones are painted over them. */
export function facesToward(rings: readonly StandingRing[], look: Look): readonly Face[] {
  const seen = rings.map((ring) => seenRing(ring, look));
  const faces: Face[] = [];
  for (let row = 1; row < seen.length; row++) {
    const [upper, lower, ring] = [seen[row - 1] ?? [], seen[row] ?? [], rings[row]];
    if (ring === undefined) continue;
    for (let at = 0; at < lower.length; at++) {
      const next = (at + 1) % lower.length;
      const [a, b, c, d] = [upper[at], upper[next], lower[next], lower[at]];
      if (a === undefined || b === undefined || c === undefined || d === undefined) continue;
      const normal = facing(a, b, c, d);
      if (normal.near <= 0) continue;
      faces.push({
        corners: [a, b, c, d],
        near: (a.near + b.near + c.near + d.near) / 4,
        light: lit(normal),
        piece: ring.outermost[at] ?? 0,
        own: ring.own[at] ?? 0,
        beneath: ring.beneath[at] ?? 0,
      });
    }
  }
  return faces.sort((one, other) => one.near - other.near);
}

export const seenRing = ({ x, y, depthBelowNape }: StandingRing, look: Look): readonly SeenPoint[] =>
  Array.from(x, (value, at) => look(value, y[at] ?? 0, depthBelowNape));

/** The outward normal of a face, as the viewer sees it, of length one; a face without extent looks nowhere. */
function facing(a: SeenPoint, b: SeenPoint, c: SeenPoint, d: SeenPoint): SeenPoint {
  const [across1, down1, near1] = [c.across - a.across, c.down - a.down, c.near - a.near];
  const [across2, down2, near2] = [d.across - b.across, d.down - b.down, d.near - b.near];
  const across = down1 * near2 - near1 * down2;
  const down = near1 * across2 - across1 * near2;
  const near = across1 * down2 - down1 * across2;
  const size = Math.hypot(across, down, near);
  return size === 0 ? { across: 0, down: 0, near: 0 } : { across: across / size, down: down / size, near: near / size };
}

/** A lamp above the viewer's left shoulder, of length one, and some light from everywhere. */
const lamp = { across: -0.45, down: -0.4, near: 0.8 } as const;

const lit = ({ across, down, near }: SeenPoint): number =>
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
