import type { LaidPlan } from "./trueTape";
import { type Given, levelMisses, type Miss, planOfGiven, type TruePair } from "./trueTrials";

/** A plan with the pair it is for, and how far it misses at the lines. */
export interface PairPlan {
  readonly pair: TruePair;
  readonly plan: LaidPlan;
  readonly misses: readonly Miss[];
}

export function pairPlan(pair: TruePair, given: Given): PairPlan {
  const plan = planOfGiven(given);
  return { pair, plan, misses: levelMisses(pair, plan) };
}

/** Each girth's and front's miss as a share of what its plan says it may miss by. */
const shares = (plans: readonly PairPlan[]): readonly number[] =>
  plans.flatMap(({ plan, misses }) =>
    misses.flatMap(({ girth, front }) => [Math.abs(girth) / plan.mayMissMm, Math.abs(front) / plan.mayMissMm]),
  );

/** The share of girths and fronts that lie within what their plan says. */
export function shareWithin(plans: readonly PairPlan[]): number {
  const all = shares(plans);
  return all.filter((share) => share <= 1).length / all.length;
}

/** What all plans would have to be wider by (as a factor) for nine in ten to lie within. */
function widthNeeded(plans: readonly PairPlan[]): number {
  const sorted = shares(plans).toSorted((a, b) => a - b);
  return sorted[Math.ceil(0.9 * sorted.length) - 1] ?? 0;
}

/** The same of all, and the least and the most when one body and one form are left out: how far the figure holds on others. */
export function widthsNeeded(plans: readonly PairPlan[]) {
  const without = plans.map(({ pair: { body, form } }) =>
    widthNeeded(plans.filter(({ pair }) => pair.body.id !== body.id && pair.form.id !== form.id)),
  );
  return { all: widthNeeded(plans), narrowest: Math.min(...without), widest: Math.max(...without) };
}
