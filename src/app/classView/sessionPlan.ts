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

/** How long a class may last (minutes). */
export const sessionLengths = [60, 90, 120, 180] as const;
export type SessionLength = (typeof sessionLengths)[number];

/** What a class does until it stops. */
export interface SessionPlan {
  readonly steps: readonly Step[];
  readonly minutes: number;
  /** The first place to stop lies further on than the class lasts. */
  readonly isLonger: boolean;
}

/**
 * The steps from the one at hand (`at`) to the last place within the class where the work may be left, or to the next one after
 * it where there is none within. Minutes are those of the steps, one pair of hands each.
 */
export function sessionPlan({ steps }: JobSteps, at: number, lasts: SessionLength): SessionPlan {
  let found: SessionPlan = { steps: [], minutes: 0, isLonger: false };
  let minutes = 0;
  for (let i = at; i < steps.length && steps[i]?.step.do !== "done"; i += 1) {
    const planned = steps[i];
    if (planned === undefined) break;
    minutes += stepMinutes(planned.step);
    if (minutes > lasts && found.steps.length > 0) break;
    if (!mayStopAfter(steps, i)) continue;
    found = { steps: steps.slice(at, i + 1).map(({ step }) => step), minutes, isLonger: minutes > lasts };
  }
  return found;
}

/** No pin is left in the form: everything that was pinned is basted, and the sides of a cover that were pinned are sewn. */
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
  /** After it no pin is left in the form. */
  readonly mayStop: boolean;
}

/** The whole job in rows; the last step of all, at which nothing is done, is none of them. */
export function sessionRows({ steps, now }: JobSteps): readonly SessionRow[] {
  let end = 0;
  return stepsByPiece(steps.filter(({ step }) => step.do !== "done").map(({ step }) => step)).map((together) => {
    end += together.length;
    return {
      steps: together,
      minutes: together.reduce((sum, step) => sum + stepMinutes(step), 0),
      isDone: end <= now,
      mayStop: mayStopAfter(steps, end - 1),
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
