import type { TapePart } from "../../../app/progress/padProgress";
import type { Step } from "../../../app/steps/step";
import type { LevelName } from "../../../core/body/vocabulary";
import type { LengthUnit } from "../../../core/lengthText";
import type { Plan, PlannedLevel, PlannedPiece, TapeReading } from "../../../core/plan/plan";
import { levelToMeasure } from "../../../app/progress/levelToMeasure";
import type { WallPerson } from "./wallPeople";
import { isReadOnWall, wallReadings } from "./wallReadings";
import type { WallState } from "./wallState";

/** What the parts of the wall show: one step of one job, looked at on one level. */
export interface WallView {
  readonly plan: Plan;
  readonly step: Step;
  readonly next: Step | null;
  /** Its place among all steps, from 1. */
  readonly place: number;
  readonly count: number;
  /** How many pieces are on before this step. */
  readonly pinned: number;
  readonly level: PlannedLevel;
  readonly readings: TapeReading;
  /** Which stretches a person read with just these pieces on. */
  readonly isRead: { readonly [part in TapePart]: boolean };
  readonly isCovered: boolean;
  readonly unit: LengthUnit;
}

/** Null only for a plan without levels. */
export function wallView({ plan, progress, job }: WallPerson, state: WallState, unit: LengthUnit): WallView | null {
  const at = Math.min(state.step, job.steps.length - 1);
  const planned = job.steps[at];
  if (planned === undefined) return null;
  const { step, before } = planned;
  const pinned = before.pinned.size;
  const name = state.level === "follow" ? followedLevel(plan, step.piece) : state.level;
  const level = plan.levels.find((one) => one.name === name) ?? plan.levels[0];
  if (level === undefined) return null;
  const readAt = (part: TapePart): boolean => isReadOnWall(progress, level.name, part, pinned);
  return {
    plan,
    step,
    next: job.steps[at + 1]?.step ?? null,
    place: at + 1,
    count: job.steps.length,
    pinned,
    level,
    readings: wallReadings(plan, progress, level.name, pinned),
    isRead: { girth: readAt("girth"), frontArc: readAt("frontArc"), backArc: readAt("backArc") },
    isCovered: state.figures === "covered",
    unit,
  };
}

/** The level that the piece at hand changes most. */
const followedLevel = (plan: Plan, piece: PlannedPiece | null): LevelName =>
  piece === null ? "waist" : levelToMeasure(plan, piece);
