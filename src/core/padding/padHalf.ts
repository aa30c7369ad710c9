import { leastCostOfStacks, longerKey, type StackDivider, type StacksCost } from "./fewestStacks";
import type { HalfFit } from "./sideLevel";

/** One way to pad a half at one level: left and right side, and the structure that both share and that either has alone. */
export interface LevelChoice {
  readonly left: HalfFit;
  readonly right: HalfFit;
  readonly shared: number;
  readonly leftAlone: number;
  readonly rightAlone: number;
  readonly miss: number;
  readonly missCost: number;
}

/** The front or the back from the top level to the bottom: what lies at each level, and what that costs. */
export interface PaddedHalf extends StacksCost {
  readonly choices: readonly LevelChoice[];
}

/** A miss of a half's reading costs from one millimeter on; one that would have to be told costs more than a piece. */
export const missCost = (miss: number): number => 0.15 * Math.max(0, Math.abs(miss) - 1) ** 2 + toldCost(miss);

const toldCost = (miss: number): number => (Math.abs(miss) > nearlyTold ? 2 : 0);

/** A little under the 3 mm from which on a miss is told (mm). */
const nearlyTold = 2.5;

/** What both halves together miss of a girth costs from two millimeters on. */
export const girthCost = (miss: number): number => 0.15 * Math.max(0, Math.abs(miss) - 2) ** 2 + toldCost(miss);

/** Every way for the two sides together; where they are alike, both do the same. */
export function levelChoices(left: readonly HalfFit[], right: readonly HalfFit[]): readonly LevelChoice[] {
  const choices =
    left === right ? left.map((fit) => choice(fit, fit)) : left.flatMap((l) => right.map((r) => choice(l, r)));
  return choices.sort((a, b) => promise(a) - promise(b)).slice(0, mostChoices);
}

/** Of the ways for the two sides so many are joined with those of other levels: of up to nine those that miss least and are most alike. */
const mostChoices = 4;
const promise = ({ missCost: cost, leftAlone, rightAlone }: LevelChoice): number =>
  cost + 0.3 * (leftAlone + rightAlone);

const structure = ({ layers }: HalfFit): number => Math.max(0, layers - 1);

function choice(left: HalfFit, right: HalfFit): LevelChoice {
  const shared = Math.min(structure(left), structure(right));
  return {
    left,
    right,
    shared,
    leftAlone: structure(left) - shared,
    rightAlone: structure(right) - shared,
    miss: left.miss + right.miss,
    missCost: (missCost(2 * left.miss) + missCost(2 * right.miss)) / 2,
  };
}

export const isTuned = ({ left, right }: LevelChoice): boolean => left.layers > 0 || right.layers > 0;

/**
 * The cheapest way through all levels, if there is one that costs less than a limit: depth first, given up as soon as it can no
 * longer be the cheapest.
 */
export function padHalf(
  levels: readonly (readonly LevelChoice[])[],
  divide: StackDivider,
  limit: number,
): PaddedHalf | null {
  let best: PaddedHalf | null = null;
  let least = limit;
  const taken: LevelChoice[] = [];
  const finish = (without: number, runs: number, keys: StackKeys): void => {
    let cost = without;
    let pieces = runs;
    for (let i = 0; i < keys.length; i++) {
      const stacks = divide.cost(keys[i] as number);
      cost += stacks.cost;
      pieces += stacks.pieces;
      if (cost >= least) return;
    }
    least = cost;
    best = { cost, pieces, choices: taken.slice() };
  };
  const go = (at: number, missed: number, runs: number, shared: number, left: number, right: number): void => {
    const stacks = leastCostOfStacks(shared) + leastCostOfStacks(left) + leastCostOfStacks(right);
    if (missed + runs + stacks > least) return;
    if (at === levels.length) {
      finish(missed + runs, runs, [shared, left, right]);
      return;
    }
    const wasTuned = at > 0 && isTuned(taken[at - 1] as LevelChoice);
    for (const one of levels[at] as readonly LevelChoice[]) {
      taken[at] = one;
      go(
        at + 1,
        missed + one.missCost,
        runs + (!wasTuned && isTuned(one) ? 1 : 0),
        longerKey(shared, one.shared),
        longerKey(left, one.leftAlone),
        longerKey(right, one.rightAlone),
      );
    }
  };
  go(0, 0, 0, 0, 0, 0);
  return best;
}

/** The layers that both sides share, that the left has alone, and the right. */
type StackKeys = readonly [shared: number, left: number, right: number];
