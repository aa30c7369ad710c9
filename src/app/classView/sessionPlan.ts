import { plannedAbove } from "../above/fittingBuilds";
import { armReading } from "../../core/arm/armReadings";
import type { Plan } from "../../core/plan/plan";
import type { SettledFitting } from "../../document/fitting";
import type { Derived } from "../session/derived";
import { isReadAtLines } from "../steps/isReadAtLines";
import { type JobSteps, jobSteps, plannedStep } from "../steps/plannedSteps";
import type { Step } from "../steps/step";
import { stepMinutes } from "../steps/stepMinutes";
import { lineDepths, workFacts } from "../steps/workFacts";
import { workState } from "../steps/workState";

/** How long a class may last (minutes); a whole day at most, and two of them. */
export const sessionLengths = [60, 90, 120, 180, 360, 720] as const;
export type SessionLength = (typeof sessionLengths)[number];

/** A day of a class (minutes). A judgement: with two breaks hands and eyes last no longer. */
export const sessionDay = 360;

/** What a class does until it stops. */
export interface SessionPlan {
  readonly steps: readonly Step[];
  readonly minutes: number;
  /** The first place to stop lies further on than the class lasts. */
  readonly isLonger: boolean;
  /** From the beginning of the class to the place to stop after this one; null where the job ends first. */
  readonly toNextStop: number | null;
}

/**
 * The steps from the one at hand (`at`) to the last place within the class where the work may be left, or to the next one after
 * it where there is none within. Minutes are those of the steps, one pair of hands each. Paper stops at the same places.
 */
export function sessionPlan({ steps }: JobSteps, at: number, lasts: number): SessionPlan {
  const ends = rowEnds(steps);
  let found: SessionPlan = { steps: [], minutes: 0, isLonger: false, toNextStop: null };
  let minutes = 0;
  for (let i = at; i < steps.length && steps[i]?.step.do !== "done"; i += 1) {
    const planned = steps[i];
    if (planned === undefined) break;
    minutes += stepMinutes(planned.step);
    if (!ends.has(i) || !mayStopAfter(steps, i)) continue;
    if (found.steps.length > 0 && minutes > lasts) return { ...found, toNextStop: minutes };
    const done = steps.slice(at, i + 1).map(({ step }) => step);
    found = { steps: done, minutes, isLonger: minutes > lasts, toNextStop: null };
  }
  return found;
}

/** The class day by day: one plan for a class within a day, and as many as it has days otherwise, each from where the one before stops. */
export function sessionDays(job: JobSteps, at: number, lasts: number): readonly SessionPlan[] {
  const days: SessionPlan[] = [];
  let from = at;
  for (let left = lasts; left > 0; left -= sessionDay) {
    const day = sessionPlan(job, from, Math.min(left, sessionDay));
    if (day.steps.length === 0 && days.length > 0) break;
    days.push(day);
    from += day.steps.length;
  }
  return days;
}

/** All that is left to do from a step on (minutes). */
export const minutesLeft = ({ steps }: JobSteps, at: number): number =>
  steps.slice(at).reduce((sum, { step }) => sum + stepMinutes(step), 0);

/** The places of the last steps of all rows: the work at one piece is left as a whole. */
function rowEnds(steps: JobSteps["steps"]): ReadonlySet<number> {
  const ends = new Set<number>();
  let end = -1;
  for (const row of stepsByPiece(steps.map(({ step }) => step))) {
    end += row.length;
    ends.add(end);
  }
  return ends;
}

/** No pin holds a piece: everything that was pinned is basted, and the sides of a cover that were pinned are sewn. */
function mayStopAfter(steps: JobSteps["steps"], place: number): boolean {
  if (steps[place]?.step.do === "fit-cover") return false;
  const after = steps[place + 1]?.before;
  return after === undefined || [...after.pinned.keys()].every((id) => after.basted.has(id));
}

export type StepsTogether = readonly [Step, ...Step[]];

/** Steps that follow each other with one piece are one line: a class reads all of them from the back row. */
export function stepsByPiece(steps: readonly Step[]): readonly StepsTogether[] {
  const rows: [Step, ...Step[]][] = [];
  for (const step of steps) {
    const last = rows.at(-1);
    if (last !== undefined && isWith(last[0], step)) last.push(step);
    else rows.push([step]);
  }
  return rows;
}

const isWith = ({ piece }: Step, step: Step): boolean =>
  piece !== null && (step.do === "carry-lines" || step.piece?.id === piece.id);

/** Steps of one piece, or one step, of the whole job as a class plans it. */
export interface SessionRow {
  readonly steps: StepsTogether;
  /** One pair of hands. */
  readonly minutes: number;
  readonly isDone: boolean;
  /** After it no pin holds a piece. */
  readonly mayStop: boolean;
  /** The places of its first and its last step, from 1. */
  readonly from: number;
  readonly to: number;
  /** The day of the class that ends with it, from 1, where each day goes as far as it can; null where none does. */
  readonly endsDay: number | null;
}

/** The whole job in rows; the last step of all, at which nothing is done, is none of them. */
export function sessionRows(job: JobSteps): readonly SessionRow[] {
  const { steps, now } = job;
  const dayEnds: number[] = [];
  for (const day of sessionDays(job, now, minutesLeft(job, now) * 3 + sessionDay))
    dayEnds.push((dayEnds.at(-1) ?? now) + day.steps.length);
  let end = 0;
  return stepsByPiece(steps.filter(({ step }) => step.do !== "done").map(({ step }) => step)).map((together) => {
    const from = end + 1;
    end += together.length;
    const day = end > now ? dayEnds.indexOf(end) : -1;
    return {
      steps: together,
      minutes: together.reduce((sum, step) => sum + stepMinutes(step), 0),
      isDone: end <= now,
      mayStop: mayStopAfter(steps, end - 1),
      from,
      to: end,
      endsDay: day < 0 ? null : day + 1,
    };
  });
}

/** The job of a fitting as paper knows it: what was done, and from there what the plan expects. */
export function paperJob(plan: Plan, derived: Derived, fitting: SettledFitting): JobSteps {
  const known = {
    isAtLines: isReadAtLines(plan, fitting),
    hasArm: armReading(derived.lengths?.body ?? {}).kind === "whole",
    above: plannedAbove(plan, derived, fitting),
  };
  const done = workFacts(fitting.work, lineDepths(plan));
  return jobSteps({ plan, ...known }, done, plannedStep(plan, workState(done), known));
}
