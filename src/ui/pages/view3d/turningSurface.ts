import { type Outline, sectionOutline } from "../../../core/geometry/outline";
import type { Piece } from "../../../core/padding/piece";
import { piecesThickness } from "../../../core/padding/layerThickness";
import type { SectionAt } from "../../../core/body/torsoCurve";

/**
 * A form or a body as rings at many heights, each with the same number of points, in the same order round: from centre
 * back over the right side, centre front and the left side. Millimetres; x to the wearer's left, y to the front, and the
 * height as the drop below the nape. A ring stands on every level that is asked for, so that what is drawn there is the
 * level's own section.
 */
export interface TurningRing {
  readonly drop: number;
  readonly outline: Outline;
  /** What each piece adds at each point (mm), in the order of pinning; no pieces, no lists. */
  readonly pieceDepths: readonly Float64Array[];
}

/** A ring as it stands with some of the pieces on: where each point is, and which piece lies outermost there (0: none). */
export interface StandingRing {
  readonly drop: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly outermost: Uint8Array;
  /** How thick the outermost piece is there (mm), and which piece it lies on. */
  readonly own: Float64Array;
  readonly beneath: Uint8Array;
}

const ringStep = 9;
const pointsPerPart = 9;

/** Every ring's drop from top to bottom, at most nine millimetres apart, with a ring on each of the stops between. */
export function ringDrops(top: number, bottom: number, stops: readonly number[]): readonly number[] {
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
  drops: readonly number[],
): readonly TurningRing[] {
  const inOrder = pieces.toSorted((a, b) => a.order - b.order);
  return drops.map((drop) => {
    const outline = sectionOutline(sectionAt(drop), pointsPerPart);
    return { drop, outline, pieceDepths: inOrder.map((piece) => piecesThickness([piece], { depth: drop, outline })) };
  });
}

/** The rings with the first so many pieces on. */
export const standing = (surface: readonly TurningRing[], count: number): readonly StandingRing[] =>
  surface.map(({ drop, outline, pieceDepths }) => {
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
      drop,
      x: raised(outline.x, outline.normalX),
      y: raised(outline.y, outline.normalY),
      outermost,
      own,
      beneath,
    };
  });
