import { type LevelName, levelNames } from "../body/vocabulary";
import type { Calibration, LevelPosterior } from "../calibration/calibration";
import { type Layer, rowAt } from "../padding/layer";
import { type Laid, type LevelOutline, piecesThickness } from "../padding/layerThickness";
import { withBonus } from "../padding/paddedThickness";
import type { Piece } from "../padding/piece";
import { tapeQuarters } from "../tape/tape";
import { tapeAgreement } from "../tolerances";
import { type Millimetres, mm } from "../units";
import type { Basis } from "./basis";
import type { Start } from "./start";

/**
 * Something to take away where the tape already reads too much: in front or behind at one level, by how much, from which
 * pinned piece (the outermost that lies there), and how. Peel: take the piece off. Trim: narrow it at this
 * level by so much on each side. Pull thin: tease it out there until the tape reads right.
 */
export interface Correction {
  readonly level: LevelName;
  readonly half: "front" | "back";
  readonly over: Millimetres;
  readonly pieceId: string;
  readonly how:
    | { readonly kind: "peel" }
    | { readonly kind: "trim"; readonly eachSide: Millimetres }
    | { readonly kind: "pullThin" };
}

/** Nowhere is more taken off a side than this share of the whole width: half of that side. */
export const mostTrimmed = 1 / 4;

/** Corrections from the top level down; none where the padding reads no more than agreement over. */
export function corrections(
  from: Basis,
  start: Start,
  pinned: readonly Piece[],
  learned: Calibration,
): readonly Correction[] {
  return (["front", "back"] as const).flatMap((half) => {
    const levels = levelNames.map((level, i) => ({
      level,
      levelSection: from.levelSections[i] as LevelOutline,
      over: overTarget(from, learned.levels[level], level, half),
      gain: gainAt(from.levelSections[i] as LevelOutline, start, half),
    }));
    // A piece comes off as a whole: only where it is too much at every level where it lies.
    const isTooMuch = (laid: Laid) =>
      levels.every(({ over, gain }) => gain(laid) <= leastGain || over >= peelShare * gain(laid));
    return levels.flatMap(({ level, levelSection, over, gain }): readonly Correction[] => {
      if (over <= tapeAgreement) return [];
      const at = start.pinned.findLastIndex((laid) => gain(laid) > leastGain);
      const [piece, laid] = [pinned[at], start.pinned[at]];
      if (piece === undefined || laid === undefined) return [];
      const how = isTooMuch(laid) ? ({ kind: "peel" } as const) : wayOf(piece, levelSection.depth, over / gain(laid));
      return [{ level, half, over: mm(over), pieceId: piece.id, how }];
    });
  });
}

/** A piece that moves the tape by less than this (mm) at a level does not lie there. */
const leastGain = 1;

function overTarget({ targets }: Basis, now: LevelPosterior, level: LevelName, half: "front" | "back"): number {
  const { quarters } = targets[level];
  return half === "front"
    ? now.frontArc.value - quarters.leftFront - quarters.rightFront
    : now.backArc.value - quarters.leftBack - quarters.rightBack;
}

/** What one pinned piece adds to the front or back reading of a level: the tape over all of them less that without it. */
function gainAt(levelSection: LevelOutline, { pinned, layer }: Start, half: "front" | "back"): (piece: Laid) => number {
  const whole = piecesThickness(pinned, levelSection);
  const read = (planned: Float64Array) => {
    const quarters = tapeQuarters(levelSection.outline, withBonus(planned, layer));
    return half === "front" ? quarters.leftFront + quarters.rightFront : quarters.leftBack + quarters.rightBack;
  };
  const all = read(whole);
  return (piece) => {
    const own = piecesThickness([piece], levelSection);
    return all - read(whole.map((thickness, i) => thickness - (own[i] as number)));
  };
}

/** A piece with edges: trim it, as far as a trim goes. One that goes all around: pull it thin. */
function wayOf({ layers }: Piece, depth: number, share: number): Correction["how"] {
  const outermost = layers[layers.length - 1] as Layer;
  if (layers.every(({ wrap }) => wrap)) return { kind: "pullThin" };
  const { start, end } = rowAt(outermost.rows, depth);
  return { kind: "trim", eachSide: mm(Math.round(Math.min(share / 2, mostTrimmed) * (end - start))) };
}

/** From three quarters of what a piece adds, taking it off leaves less to mend than trimming it would. */
const peelShare = 0.75;
