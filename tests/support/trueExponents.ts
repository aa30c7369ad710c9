import { type ExponentEstimate, exponentEstimates } from "../../src/core/body/estimates";
import { mapLevels } from "../../src/core/body/vocabulary";
import { checkedLevelNames } from "./planCheckerFile";
import type { Scenario } from "./trueScenarios";
import { levelMisses, type Miss, planOfGiven, spreadOf, type TruePair, truePairs } from "./trueTrials";

/**
 * Whether the assumed exponents say something of figures they were not chosen on. For each pair of a body and a form the
 * best candidate of every level is chosen on those pairs that share neither the body nor the form, and read on the pair
 * left out. A level's exponents move hardly anything at another level, so all levels take the same candidate at a time.
 */
type Level = (typeof checkedLevelNames)[number];
type Halves = Pick<ExponentEstimate, "front" | "back">;

/** What may be assumed at each level; the first is what the planner assumes. */
export const candidates: { readonly [level in Level]: readonly Halves[] } = mapLevels((level) => {
  const { front, back } = exponentEstimates[level];
  const steps = [0, 0.3, -0.3];
  const all = steps.flatMap((more) => steps.map((behind) => ({ front: front + more, back: back + behind })));
  return level === "bust" ? [...all, { front: front + 0.9, back }, { front: front - 0.9, back }] : all;
});

export interface ExponentCheck {
  /** Girth and front misses with what the planner assumes, with the best of all pairs, and with what was chosen without the pair. */
  readonly assumed: readonly Miss[];
  readonly bestOfAll: readonly Miss[];
  readonly leftOut: readonly Miss[];
  /** What is best of all pairs, and how often it was chosen without one. */
  readonly chosen: { readonly [level in Level]: { readonly best: Halves; readonly share: number } };
}

export function exponentCheck(given: Scenario["given"]): ExponentCheck {
  const most = Math.max(...checkedLevelNames.map((level) => candidates[level].length));
  const runs = Array.from({ length: most }, (_, i) => missesWith(given, i));
  const missOf = (pair: number, level: Level, i: number) =>
    (runs[i] as readonly (readonly Miss[])[])[pair]?.find((miss) => miss.level === level) as Miss;
  const bestFor = (level: Level, pairs: readonly number[]): number => {
    const costs = candidates[level].map((_, i) =>
      pairs.reduce((sum, pair) => {
        const { girth, front } = missOf(pair, level, i);
        return sum + girth * girth + front * front;
      }, 0),
    );
    return costs.indexOf(Math.min(...costs));
  };
  const pairs = truePairs.map((_, i) => i);
  const strangers = (out: number) => pairs.filter((pair) => sharesNothing(truePairs[out], truePairs[pair]));
  const chosenFor = new Map(
    checkedLevelNames.map((level) => [level, pairs.map((out) => bestFor(level, strangers(out)))]),
  );
  const best = new Map(checkedLevelNames.map((level) => [level, bestFor(level, pairs)]));
  const collect = (pick: (pair: number, level: Level) => number) =>
    pairs.flatMap((pair) => checkedLevelNames.map((level) => missOf(pair, level, pick(pair, level))));
  return {
    assumed: collect(() => 0),
    bestOfAll: collect((_, level) => best.get(level) as number),
    leftOut: collect((pair, level) => (chosenFor.get(level) as readonly number[])[pair] as number),
    chosen: Object.fromEntries(
      checkedLevelNames.map((level) => {
        const [index, all] = [best.get(level) as number, chosenFor.get(level) as readonly number[]];
        const share = all.filter((one) => one === index).length / all.length;
        return [level, { best: candidates[level][index], share }];
      }),
    ) as ExponentCheck["chosen"],
  };
}

const sharesNothing = (one: TruePair | undefined, other: TruePair | undefined): boolean =>
  one?.body.id !== other?.body.id && one?.form.id !== other?.form.id;

/** The planner assumes the same of everybody, so for a trial what it assumes is changed and put back. */
function missesWith(given: Scenario["given"], i: number): readonly (readonly Miss[])[] {
  const table = exponentEstimates as { [level in Level]: ExponentEstimate };
  const before = { ...exponentEstimates };
  for (const level of checkedLevelNames)
    table[level] = { ...before[level], ...(candidates[level][i] ?? candidates[level][0]) };
  try {
    return truePairs.map((pair) => levelMisses(pair, planOfGiven(given(pair))));
  } finally {
    Object.assign(table, before);
  }
}

/** Girths and fronts together, p95 and worst (mm). */
export const spreadOfBoth = (misses: readonly Miss[]) => spreadOf(misses.flatMap(({ girth, front }) => [girth, front]));
