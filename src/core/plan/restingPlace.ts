import { type LevelName, levelNames } from "../body/vocabulary";
import type { Calibration } from "../calibration/calibration";
import type { Plan, PlannedLevel, TapeReading, TapeReadings } from "./plan";

/** Where the work rests: pin so many of the remaining pieces, then read the tape at these levels. */
export interface RestingPlace {
  readonly pieces: number;
  readonly levels: readonly LevelName[];
}

/** Why a level would be read: a reading is in danger of going over, or only the outermost pieces are left. */
export type RestReason = "danger" | "outermost";

/**
 * Whether a level was read with just the pieces that are on now, not since, or is not going to be read (any more, for
 * that reason).
 */
export type LevelStates = (level: LevelName, reason: RestReason) => "fresh" | "stale" | "closed";

/**
 * The next rest: before the first piece that might take a reading over the body's, given how unsure the thickness of a
 * layer and the padded form now are (the level in danger is read), and before the tuning layers, whose widths are
 * chosen by the tape (every level that changed is read). A level that was read with just these pieces on tells nothing
 * new.
 */
export function restingPlace(
  plan: Plan,
  now: TapeReadings,
  learned: Calibration,
  levelState: LevelStates,
): RestingPlace {
  for (const [i, piece] of plan.pieces.entries()) {
    const before = readingsAt(plan, i, now);
    const isNew = (reason: RestReason) => (name: LevelName) => {
      const state = levelState(name, reason);
      return state === "stale" || (state === "fresh" && touches(now[name], before[name]));
    };
    const lies = levelNames.filter((name) => touches(before[name], piece.readingsAfter[name]));
    if (piece.kind === "tuning" && lies.some(isNew("outermost")))
      return { pieces: i, levels: levelNames.filter(isNew("outermost")) };
    const risky = lies.filter(
      (name) => isNew("danger")(name) && isRisky(piece.readingsAfter[name], now[name], name, plan, learned),
    );
    if (risky.length > 0) return { pieces: i, levels: risky };
  }
  return { pieces: plan.pieces.length, levels: levelNames };
}

const readingsAt = (plan: Plan, pieces: number, now: TapeReadings): TapeReadings =>
  plan.pieces[pieces - 1]?.readingsAfter ?? now;

/** A piece that moves no reading of a level by this much (mm) does not lie there. */
const leastGain = 1;

const readingNames = ["girth", "frontArc", "backArc"] as const;

const touches = (before: TapeReading, after: TapeReading): boolean =>
  readingNames.some((what) => after[what] - before[what] >= leastGain);

/** What is over by up to this (mm) is easily mended by narrowing the last pieces; more would have to come off again. */
const mendable = 8;

/** Nine times in ten a reading stays below this many standard deviations over what is expected. */
const oneSidedNinety = 1.28;

function isRisky(
  after: TapeReading,
  now: TapeReading,
  name: LevelName,
  plan: Plan,
  { building, finishing, levels }: Calibration,
): boolean {
  const level = levelNames.indexOf(name);
  const planned = plan.levels[level] as PlannedLevel;
  const share = Math.max(building.standardDeviation / building.layer, finishing.standardDeviation / finishing.layer);
  const known = levels[name];
  return readingNames.some((what) => {
    const deviation = Math.hypot(known[what].standardDeviation, share * (after[what] - now[what]));
    return after[what] + oneSidedNinety * deviation > planned.body[what].value + mendable;
  });
}
