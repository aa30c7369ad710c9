import { levelToMeasure } from "../progress/levelToMeasure";
import { isConfirmed, type PadProgress, type TapePart, tapeParts } from "../progress/padProgress";
import type { StepFacts } from "../steps/stepFacts";
import { stepKeys } from "../steps/stepKeys";
import type { Step } from "../steps/step";
import type { FittedCover } from "../../core/cover/fittedCover";
import type { LevelName } from "../../core/body/vocabulary";
import type { LengthUnit } from "../../core/lengthText";
import type { Plan, PlannedLevel, TapeReading } from "../../core/plan/plan";
import { type Millimetres, mm } from "../../core/units";
import type { ClassPerson } from "./classPeople";
import { type ClassState, isFormCovered, isPersonCovered } from "./classState";
import { askedAt, type ClassTyped, type TypedName, type TypedReadings, typedNow } from "./classTyped";

/** What the parts of the class view show: one step of one job, looked at on one level. */
export interface ClassView {
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
  /** What is covered; what follows from both (left to go, sizes of pieces, what to expect) is covered with either. */
  readonly isCovered: boolean;
  readonly covers: { readonly person: boolean; readonly form: boolean };
  readonly unit: LengthUnit;
  readonly facts: StepFacts;
  /** The cover for the finished padding; null where nothing of it is known. */
  readonly cover: () => FittedCover | null;
  /** What the teacher wrote to this step. */
  readonly note: string | null;
  /** What the class reads at this step and level, in the order it is typed in, and what was typed so far. */
  readonly asked: readonly TypedName[];
  readonly typed: TypedReadings;
}

/** Null only for a plan without levels. */
export function classView(
  { plan, progress, job, facts, cover, notes }: ClassPerson,
  state: ClassState,
  unit: LengthUnit,
  typed: ClassTyped = {},
): ClassView | null {
  const at = Math.min(state.step, job.steps.length - 1);
  const planned = job.steps[at];
  if (planned === undefined) return null;
  const { step, before } = planned;
  const pinned = before.pinned.size;
  const name = state.level === "follow" ? followedLevel(plan, step) : state.level;
  const level = plan.levels.find((one) => one.name === name) ?? plan.levels[0];
  if (level === undefined) return null;
  const plannedAt = (place: number): TapeReading => {
    const { step, before } = job.steps[place] ?? planned;
    return overCover(step, level.name, classReadings(plan, progress, level.name, before.pinned.size));
  };
  const now = typedNow(typed, level.name, at, plannedAt);
  const readAt = (part: TapePart): boolean =>
    now === null ? isReadWith(progress, level.name, part, pinned) : isConfirmed(now[part]);
  return {
    plan,
    step,
    next: job.steps[at + 1]?.step ?? null,
    place: at + 1,
    count: job.steps.length,
    pinned,
    level,
    readings:
      now === null
        ? plannedAt(at)
        : { girth: now.girth.value, frontArc: now.frontArc.value, backArc: now.backArc.value },
    isRead: { girth: readAt("girth"), frontArc: readAt("frontArc"), backArc: readAt("backArc") },
    isCovered: state.figures !== "shown",
    covers: { person: isPersonCovered(state.figures), form: isFormCovered(state.figures) },
    unit,
    facts,
    cover,
    note: notes[stepKeys(job.steps.map((one) => one.step))[at] ?? ""] ?? null,
    asked: askedAt(step, level.name),
    typed: typed[at] ?? {},
  };
}

/** The level that the piece at hand changes most; without a piece the waist, or what is read where that is not. */
const followedLevel = (plan: Plan, { piece, levels }: Step): LevelName =>
  piece !== null ? levelToMeasure(plan, piece) : levels.includes("waist") ? "waist" : (levels[0] ?? "waist");

/** Over the cover the tape reads less than over the padding: what the step expects there. */
function overCover(step: Step, level: LevelName, padded: TapeReading): TapeReading {
  const [girth, front] = [step.expected[`${level}Girth`], step.expected[`${level}FrontArc`]];
  if (step.do !== "read-cover" || girth === undefined || front === undefined) return padded;
  return { girth: mm(girth), frontArc: mm(front), backArc: mm(girth - front) };
}

/**
 * What the tape reads at a level with so many pieces on. What a person read off the padded form counts from there on, as
 * it does beside the form; before that, and for a plan nobody has begun, it is what the plan expects.
 */
export function classReadings(plan: Plan, progress: PadProgress, level: LevelName, step: number): TapeReading {
  const planned = plannedReadings(plan, level, step);
  if (step < progress.pinnedCount || !isInOrder(progress)) return planned;
  const reached = plannedReadings(plan, level, progress.pinnedCount);
  const now = progress.now[level];
  const at = (part: TapePart): Millimetres => mm(now[part].value + planned[part] - reached[part]);
  return { girth: at("girth"), frontArc: at("frontArc"), backArc: at("backArc") };
}

/** Whether a person read this stretch with just these pieces on; everything else in the class view is what the plan expects. */
const isReadWith = (progress: PadProgress, level: LevelName, part: TapePart, step: number): boolean =>
  step === progress.pinnedCount && isInOrder(progress) && isConfirmed(progress.now[level][part]);

const plannedReadings = (plan: Plan, level: LevelName, step: number): TapeReading =>
  (plan.pieces[step - 1]?.readingsAfter ?? plan.bareForm)[level];

/** The pieces on the form are the first ones of the plan, so that a step in the class view means the same pieces. */
const isInOrder = ({ pieces, pinnedCount }: PadProgress): boolean =>
  pieces.slice(0, pinnedCount).every(({ pinned }) => pinned);

/** How much of the tape the strips of a level show (mm): the longest way from the bare form to the body, with room. */
export const stripSpan = (wanted: TapeReading, bare: TapeReading): number =>
  Math.max(shortestStrip, ...tapeParts.map((part) => Math.abs(wanted[part] - bare[part]) * 1.25));

/** A few centimetres, so that a level that is nearly there does not look far away. */
const shortestStrip = 60;
