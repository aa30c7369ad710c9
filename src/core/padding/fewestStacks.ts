import { type Gap, leastHeight, tallest } from "./levelGaps";

/** How many layers a stack has at each level, from the top: it rises once and falls once, so that every layer covers one run of levels. */
export type Profile = readonly number[];

/** What a profile costs, one a piece and a little more, and how many pieces that is. */
export interface StacksCost {
  readonly cost: number;
  readonly pieces: number;
}

/**
 * Divides profiles into the fewest stacks, each one piece to cut and pin: what a profile (told by its key) costs, and the
 * stacks it is divided into. Asked again and again, it remembers.
 */
export interface StackDivider {
  readonly cost: (key: number) => StacksCost;
  readonly stacks: (profile: Profile) => readonly Profile[];
}

/** What a further layer costs beside a further piece, and what edges in a tight gap and a layer too low to pin cost. */
const layerCost = 0.04;
const tightCost = { tight: 0.06, veryTight: 0.12 } as const;
const tooLowCost = 3;

/** A gap under this (mm) shortens the feather, one under the second has room for no feather at all. */
const tightGap = 34;
const veryTightGap = 24;

/** Up to 63 layers at up to eight levels in one number: the key of a profile and one level more. */
export const longerKey = (key: number, layers: number): number => key * 64 + layers;

const profileKey = (profile: Profile): number => profile.reduce(longerKey, 0);

function profileOf(key: number, levels: number): number[] {
  const profile = new Array<number>(levels).fill(0);
  let rest = key;
  for (let i = levels - 1; i >= 0; i--) {
    profile[i] = rest % 64;
    rest = Math.floor(rest / 64);
  }
  return profile;
}

export function stackDivider(depths: readonly number[], gaps: readonly Gap[], mostLayers: number): StackDivider {
  const levels = depths.length;
  const known = new Map<number, StacksCost>([[0, { cost: 0, pieces: 0 }]]);
  const ends = depths.map((_, first) =>
    depths.map((_, last) => (last < first ? 0 : runCost(depths, gaps, first, last))),
  );
  /** The cost of a profile with one stack taken off it at a peak. */
  const costAt = (profile: Profile, peak: number): StacksCost => {
    const stack = largestUnder(profile, peak, mostLayers);
    let rest = 0;
    for (let i = 0; i < levels; i++) rest = longerKey(rest, (profile[i] as number) - (stack[i] as number));
    const others = cost(rest);
    return { cost: 1 + layersCost(stack, peak, ends) + others.cost, pieces: 1 + others.pieces };
  };
  const cost = (key: number): StacksCost => {
    const found = known.get(key);
    if (found !== undefined) return found;
    const profile = profileOf(key, levels);
    let least: StacksCost = { cost: Number.POSITIVE_INFINITY, pieces: 0 };
    for (let peak = 0; peak < levels; peak++) {
      const found = isPeak(profile, peak) ? costAt(profile, peak) : least;
      if (found.cost < least.cost) least = found;
    }
    known.set(key, least);
    return least;
  };
  const stacks = (profile: Profile): readonly Profile[] => {
    const peaks = profile.map((_, i) => i).filter((i) => isPeak(profile, i));
    const best = peaks.find((peak) => costAt(profile, peak).cost <= cost(profileKey(profile)).cost);
    if (best === undefined) return [];
    const stack = largestUnder(profile, best, mostLayers);
    return [stack, ...stacks(profile.map((layers, i) => layers - (stack[i] as number)))];
  };
  return { cost, stacks };
}

/**
 * What a profile costs at least, told at a glance: a piece, or two where it rises anew after it fell; and every layer
 * covers one run of levels, so it rises once.
 */
export function leastCostOfStacks(key: number): number {
  let [rest, below, rises] = [key, 0, 0];
  let [fell, again] = [false, false];
  while (rest > 0) {
    const layers = rest % 64;
    if (layers > below) {
      rises += layers - below;
      again ||= fell;
    } else if (layers < below) fell = true;
    below = layers;
    rest = Math.floor(rest / 64);
  }
  return rises === 0 ? 0 : (again ? 2 : 1) + layerCost * rises;
}

/** The first level of a run that is higher than what lies beside it. */
function isPeak(profile: Profile, at: number): boolean {
  const height = profile[at] as number;
  if (height === 0 || (at > 0 && (profile[at - 1] as number) >= height)) return false;
  let next = at + 1;
  while (next < profile.length && profile[next] === height) next++;
  return next === profile.length || (profile[next] as number) < height;
}

/** The largest profile under another that has its peak there and falls to both sides. */
function largestUnder(profile: Profile, peak: number, mostLayers: number): Profile {
  const stack = new Array<number>(profile.length).fill(0);
  stack[peak] = Math.min(mostLayers, profile[peak] as number);
  for (let i = peak - 1; i >= 0; i--) stack[i] = Math.min(stack[i + 1] as number, profile[i] as number);
  for (let i = peak + 1; i < profile.length; i++) stack[i] = Math.min(stack[i - 1] as number, profile[i] as number);
  return stack;
}

/** The levels that each layer of a stack covers, the innermost (which covers the fewest) first. */
export function layerRuns(stack: Profile): readonly (readonly [first: number, last: number])[] {
  const highest = Math.max(...stack);
  return Array.from({ length: highest }, (_, i) => {
    const covers = (layers: number) => layers >= highest - i;
    return [stack.findIndex(covers), stack.findLastIndex(covers)] as const;
  });
}

/** What the layers of a stack cost: from the peak outward, the lower a layer lies the further it reaches. */
function layersCost(stack: Profile, peak: number, ends: readonly (readonly number[])[]): number {
  let first = peak;
  let last = peak;
  let sum = 0;
  for (let height = stack[peak] as number; height > 0; height--) {
    while (first > 0 && (stack[first - 1] as number) >= height) first--;
    while (last < stack.length - 1 && (stack[last + 1] as number) >= height) last++;
    sum += layerCost + ((ends[first] as readonly number[])[last] as number);
  }
  return sum;
}

/** What the ends of one layer over these levels cost. */
export function runCost(depths: readonly number[], gaps: readonly Gap[], first: number, last: number): number {
  const end = ({ length }: Gap) =>
    length < veryTightGap ? tightCost.veryTight : length < tightGap ? tightCost.tight : 0;
  const tooLow = tallest(depths, gaps, first, last) < leastHeight ? tooLowCost : 0;
  return end(gaps[first] as Gap) + end(gaps[last + 1] as Gap) + tooLow;
}
