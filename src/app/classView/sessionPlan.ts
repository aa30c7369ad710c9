import type { JobSteps } from "../steps/plannedSteps";
import type { Step } from "../steps/step";
import { stepMinutes } from "../steps/stepMinutes";

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
