import { isConfirmed, type PadProgress, type TapePart, tapeParts } from "../../../app/progress/padProgress";
import type { LevelName } from "../../../core/body/vocabulary";
import type { Plan, TapeReading } from "../../../core/plan/plan";
import { type Millimetres, mm } from "../../../core/units";

/**
 * What the tape reads at a level with so many pieces on. What a person read off the padded form counts from there on, as
 * it does beside the form; before that, and for a plan nobody has begun, it is what the plan expects.
 */
export function wallReadings(plan: Plan, progress: PadProgress, level: LevelName, step: number): TapeReading {
  const planned = plannedReadings(plan, level, step);
  if (step < progress.pinnedCount || !isInOrder(progress)) return planned;
  const reached = plannedReadings(plan, level, progress.pinnedCount);
  const now = progress.now[level];
  const at = (part: TapePart): Millimetres => mm(now[part].value + planned[part] - reached[part]);
  return { girth: at("girth"), frontArc: at("frontArc"), backArc: at("backArc") };
}

/** Whether a person read this stretch with just these pieces on; everything else on the wall is what the plan expects. */
export const isReadOnWall = (progress: PadProgress, level: LevelName, part: TapePart, step: number): boolean =>
  step === progress.pinnedCount && isInOrder(progress) && isConfirmed(progress.now[level][part]);

export const plannedReadings = (plan: Plan, level: LevelName, step: number): TapeReading =>
  (plan.pieces[step - 1]?.readingsAfter ?? plan.bareForm)[level];

/** The pieces on the form are the first ones of the plan, so that a step on the wall means the same pieces. */
const isInOrder = ({ pieces, pinnedCount }: PadProgress): boolean =>
  pieces.slice(0, pinnedCount).every(({ pinned }) => pinned);

/** How much of the tape the strips of a level show (mm): the longest way from the bare form to the body, with room. */
export const stripSpan = (wanted: TapeReading, bare: TapeReading): number =>
  Math.max(shortestStrip, ...tapeParts.map((part) => Math.abs(wanted[part] - bare[part]) * 1.25));

/** A few centimetres, so that a level that is nearly there does not look far away. */
const shortestStrip = 60;
