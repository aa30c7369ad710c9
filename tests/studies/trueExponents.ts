import { type ExponentEstimate, exponentEstimates } from "../../src/core/body/estimates";
import { mapLevels } from "../../src/core/body/vocabulary";
import type { Scenario } from "../tools/trueScenarios";
import { levelMisses, type Miss, planOfGiven, type TruePair, truePairs } from "../tools/trueTrials";

/**
 * Whether the assumed exponents say something of figures they were not chosen on. Two numbers are free: one exponent of
 * every half but the bust in front, and that of the bust in front. For each pair of a body and a form the best two are
 * chosen on those pairs that share neither the body nor the form, and read on the pair left out.
 */
export interface ExponentChoice {
  readonly all: number;
  readonly bustFront: number;
}

export const exponentChoices: readonly ExponentChoice[] = [2.2, 2.3, 2.4, 2.5, 2.6, 2.8].flatMap((all) =>
  [3, 3.5, 4].map((bustFront) => ({ all, bustFront })),
);

export interface ExponentCheck {
  /** With what the planner assumes, with the best choice for all pairs, and with what was chosen without each pair. */
  readonly assumed: readonly Miss[];
  readonly bestOfAll: readonly Miss[];
  readonly leftOut: readonly Miss[];
  readonly best: ExponentChoice;
  /** What was chosen without a pair, the most frequent first. */
  readonly chosen: readonly { readonly choice: ExponentChoice; readonly times: number }[];
}

export function exponentCheck(givens: readonly Scenario["given"][]): ExponentCheck {
  const runs = exponentChoices.map((choice) => missesWith(givens, choice));
  const pairs = truePairs.map((_, i) => i);
  const bestFor = (some: readonly number[]): number => {
    const costs = runs.map((run) => some.reduce((sum, pair) => sum + costOf(run[pair] ?? []), 0));
    return costs.indexOf(Math.min(...costs));
  };
  const strangers = (out: number) => pairs.filter((pair) => sharesNothing(truePairs[out], truePairs[pair]));
  const choices = pairs.map((out) => bestFor(strangers(out)));
  const best = bestFor(pairs);
  const collect = (pick: (pair: number) => number) => pairs.flatMap((pair) => runs[pick(pair)]?.[pair] ?? []);
  return {
    assumed: missesWith(givens, null).flat(),
    bestOfAll: collect(() => best),
    leftOut: collect((pair) => choices[pair] as number),
    best: exponentChoices[best] as ExponentChoice,
    chosen: [...new Set(choices)]
      .map((i) => ({
        choice: exponentChoices[i] as ExponentChoice,
        times: choices.filter((one) => one === i).length,
      }))
      .toSorted((a, b) => b.times - a.times),
  };
}

const costOf = (misses: readonly Miss[]): number =>
  misses.reduce((sum, { girth, front }) => sum + girth * girth + front * front, 0);

const sharesNothing = (one: TruePair | undefined, other: TruePair | undefined): boolean =>
  one?.body.id !== other?.body.id && one?.form.id !== other?.form.id;

/** The planner assumes the same of everybody, so for a trial what it assumes is changed and put back. Misses by pair. */
function missesWith(givens: readonly Scenario["given"][], choice: ExponentChoice | null): readonly (readonly Miss[])[] {
  const table = exponentEstimates as { -readonly [level in keyof typeof exponentEstimates]: ExponentEstimate };
  const before = { ...exponentEstimates };
  if (choice !== null) {
    const { all, bustFront } = choice;
    const trial = (name: string) => ({ front: name === "bust" ? bustFront : all, back: all });
    Object.assign(
      table,
      mapLevels((name) => ({ ...before[name], ...trial(name) })),
    );
  }
  try {
    return truePairs.map((pair) => givens.flatMap((given) => levelMisses(pair, planOfGiven(given(pair)))));
  } finally {
    Object.assign(table, before);
  }
}
