import { type LevelName, levelNames } from "../body/vocabulary";
import type { Belief, LevelBelief } from "../calibration/believed";
import { tapeAgreement } from "../tolerances";
import type { Plan, PlannedLevel, PlannedPiece, TapeReading, TapeReadings } from "./plan";

/** Where the work rests: pin so many of the remaining pieces, then read the tape at these levels. */
export interface RestingPlace {
  readonly pieces: number;
  readonly levels: readonly LevelName[];
}

/**
 * The next rest. A level is read before a piece that might take one of its readings over the body's, given how unsure the worth
 * of a layer and the padded form now are, and before the last piece in front or behind that lies there, whose width is
 * chosen by the tape. Levels that were read since anything was pinned there need no reading.
 */
export function restingPlace(plan: Plan, now: TapeReadings, learned: Belief, isFresh: (level: LevelName, piecesOn: number) => boolean): RestingPlace {
  for (const [i, piece] of plan.pieces.entries()) {
    const before = i === 0 ? now : (plan.pieces[i - 1] as PlannedPiece).readingsAfter;
    const levels = levelNames.filter(
      (name, level) =>
        touches(before[name], piece.readingsAfter[name]) &&
        !isFresh(name, i) &&
        (isLastThere(plan, i, name) || isRisky(piece.readingsAfter[name], now[name], plan.levels[level] as PlannedLevel, level, learned)),
    );
    if (levels.length > 0) return { pieces: i, levels };
  }
  return { pieces: plan.pieces.length, levels: levelNames };
}

/** A piece that moves no reading of a level by this much (mm) does not lie there. */
const leastGain = 1;

const readingNames = ["girth", "frontArc", "backArc"] as const;

const touches = (before: TapeReading, after: TapeReading): boolean => readingNames.some((what) => after[what] - before[what] >= leastGain);

/** Whether no later piece of the same zone lies at this level. */
function isLastThere({ pieces }: Plan, at: number, level: LevelName): boolean {
  const { zone } = pieces[at] as PlannedPiece;
  if (zone === "round") return false;
  return !pieces.some((piece, i) => i > at && piece.zone === zone && touches((pieces[i - 1] as PlannedPiece).readingsAfter[level], piece.readingsAfter[level]));
}

/** Nine times in ten a reading stays below this many spreads over what is expected. */
export const oneSidedNinety = 1.28;

function isRisky(after: TapeReading, now: TapeReading, planned: PlannedLevel, level: number, { building, finishing, levels }: Belief): boolean {
  const share = Math.max(building.spread / building.layer, finishing.spread / finishing.layer);
  const believed = levels[level] as LevelBelief;
  return readingNames.some((what) => {
    const spread = Math.hypot(believed[what].spread, share * (after[what] - now[what]));
    return after[what] + oneSidedNinety * spread > planned.body[what].value + tapeAgreement;
  });
}
