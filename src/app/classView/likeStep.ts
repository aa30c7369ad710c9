import { stepKeys } from "../steps/stepKeys";
import type { JobSteps } from "../steps/plannedSteps";

/**
 * The step of another person's job that is most like the one at hand: the very same one, else the same act as often done before, else
 * as far on.
 */
export function likeStep({ steps: from }: JobSteps, at: number, { steps: to }: JobSteps): number {
  const here = from[at]?.step;
  if (here === undefined) return 0;
  const key = stepKeys(from.map(({ step }) => step))[at] ?? "";
  const same = stepKeys(to.map(({ step }) => step)).indexOf(key);
  if (same >= 0) return same;
  const before = from.slice(0, at).filter(({ step }) => step.do === here.do).length;
  const alike = to.flatMap(({ step }, i) => (step.do === here.do ? [i] : []));
  return alike[before] ?? alike.at(-1) ?? Math.min(at, Math.max(0, to.length - 1));
}
