import { levelNames } from "../body/vocabulary";
import { type CupPlaces, cupPlaces } from "./cupPlace";
import { type Profile, runCost, type StackDivider, stackDivider } from "./fewestStacks";
import { type Gap, levelGaps } from "./levelGaps";
import { girthCost, type LevelChoice, levelChoices, padHalf, type PaddedHalf } from "./padHalf";
import type { ShapingLevel, ShapingProblem } from "./shapingProblem";
import { type Half, halves, type HalfFit, SideLevel } from "./sideLevel";
import { pointOfSide, sideOutline } from "../tape/sideTape";
import { type WrapSet, wrapSets } from "./wrapChoices";

/** A shape of the padding as the search found it: what goes all around, front and back, and how many discs each cup has. */
export interface Shape {
  readonly wraps: WrapSet;
  readonly halves: { readonly [half in Half]: ShapedHalf };
  readonly discs: number;
  readonly cups: CupPlaces;
  readonly gaps: readonly Gap[];
  readonly cost: number;
}

/** The front or the back: what lies at each level, and the stacks of structure, each one piece: on both sides, or on one alone. */
export interface ShapedHalf {
  readonly choices: readonly LevelChoice[];
  readonly shared: readonly Profile[];
  readonly leftAlone: readonly Profile[];
  readonly rightAlone: readonly Profile[];
}

/**
 * The few best shapes, cheapest first. At each level the layers are whole and known, so levels are solved apart; what joins them is
 * that layers over neighboring levels are one piece. Every sensible set of wraps is tried, and for each the front and the
 * back find their cheapest way through the levels.
 */
export function searchShape(problem: ShapingProblem): readonly Shape[] {
  const search = prepare(problem);
  const { levels } = search;
  const most = levels.map((level) => mostTurns(level, problem.layer.each));
  const candidates = wrapSets(most)
    .map((wraps) => ({ wraps, least: wrapsCost(wraps, search) + leastCost(wraps, search) }))
    .sort((a, b) => a.least - b.least);
  let best: readonly Candidate[] = [];
  for (const { wraps, least } of candidates) {
    const limit = best.length < keptShapes ? Number.POSITIVE_INFINITY : (best[keptShapes - 1] as Candidate).cost;
    if (least >= limit) break;
    const shape = shapeWith(wraps, search, limit);
    if (shape !== null) best = [...best, shape].sort((a, b) => a.cost - b.cost).slice(0, keptShapes);
  }
  return best.map((candidate) => ({
    ...candidate,
    halves: { front: inStacks(candidate.halves.front, search), back: inStacks(candidate.halves.back, search) },
    cups: search.cups,
    gaps: search.gaps,
  }));
}

interface Candidate {
  readonly wraps: WrapSet;
  readonly halves: { readonly [half in Half]: PaddedHalf };
  readonly discs: number;
  readonly cost: number;
}

const inStacks = ({ choices }: PaddedHalf, { divide }: Search): ShapedHalf => ({
  choices,
  shared: divide.stacks(choices.map(({ shared }) => shared)),
  leftAlone: divide.stacks(choices.map(({ leftAlone }) => leftAlone)),
  rightAlone: divide.stacks(choices.map(({ rightAlone }) => rightAlone)),
});

const keptShapes = 3;

interface Search {
  readonly levels: readonly SearchLevel[];
  readonly discs: readonly number[];
  readonly cups: CupPlaces;
  readonly depths: readonly number[];
  readonly gaps: readonly Gap[];
  readonly divide: StackDivider;
  readonly choices: (level: number, half: Half, turns: number, discs: number) => readonly LevelChoice[];
}

interface SearchLevel {
  readonly left: SideLevel;
  readonly right: SideLevel;
}

/** No panel is thicker than this (mm), so that it can be basted and pinned through. */
const thickestPanel = 36;

function prepare(problem: ShapingProblem): Search {
  const depths = problem.levels.map(({ depth }) => depth);
  const gaps = levelGaps(depths);
  const cups = cupPlaces(problem);
  const levels = problem.levels.map((level) => searchLevel(level, problem, cups));
  const known = new Map<number, readonly LevelChoice[]>();
  const choices = (level: number, half: Half, turns: number, discs: number): readonly LevelChoice[] => {
    const key = ((level * 64 + turns) * 8 + discs) * 2 + halves.indexOf(half);
    const found = known.get(key);
    if (found !== undefined) return found;
    const { left, right } = levels[level] as SearchLevel;
    const made = levelChoices(left.fits(turns, discs)[half], right.fits(turns, discs)[half]);
    known.set(key, made);
    return made;
  };
  return {
    levels,
    depths,
    gaps,
    cups,
    discs: discCounts(problem, levels, cups),
    divide: stackDivider(depths, gaps, Math.max(1, Math.floor(thickestPanel / problem.layer.each))),
    choices,
  };
}

/** A third of an outline's points are enough to choose by. */
const searchStride = 3;

function searchLevel(level: ShapingLevel, { layer }: ShapingProblem, cups: CupPlaces): SearchLevel {
  const even = isEven(level, cups);
  const side = (isLeft: boolean): SideLevel => {
    const outline = sideOutline(level.outline, isLeft, searchStride);
    const pinned = outline.x.map(
      (_, i) => level.pinned[pointOfSide(searchStride * i, level.outline.count, isLeft)] as number,
    );
    const { target, offset } = level;
    const aim = isLeft
      ? { front: target.leftFront - offset.leftFront, back: target.leftBack - offset.leftBack }
      : { front: target.rightFront - offset.rightFront, back: target.rightBack - offset.rightBack };
    const { fromFront, depth, radii } = isLeft ? cups.left : cups.right;
    const discs = level.name === "bust" ? radii.map((radius) => ({ fromFront, off: depth - level.depth, radius })) : [];
    return new SideLevel({ outline, pinned, target: aim, layer, isEven: even, discs });
  };
  const left = side(true);
  return { left, right: even ? left : side(false) };
}

/** Whether left and right of a level ask for the same. */
function isEven({ name, target, offset, pinned, outline }: ShapingLevel, { left, right }: CupPlaces): boolean {
  const same = [target, offset].every((q) => q.leftFront === q.rightFront && q.leftBack === q.rightBack);
  if (!same || (name === "bust" && left.depth !== right.depth)) return false;
  for (let i = 0; i <= outline.count / 2; i++) {
    if (pinned[pointOfSide(i, outline.count, true)] !== pinned[pointOfSide(i, outline.count, false)]) return false;
  }
  return true;
}

/**
 * How many discs a cup may have: none but where there is a cup and the front of the bust gains at least two layers more than
 * that of the underbust. No reading needs them; the shape does.
 */
function discCounts(
  { hasCups, levels: named, layer }: ShapingProblem,
  levels: readonly SearchLevel[],
  cups: CupPlaces,
): readonly number[] {
  const most = Math.min(cups.left.radii.length, cups.right.radii.length);
  if (!hasCups || most === 0) return [0];
  const frontGain = (name: string) => {
    const at = named.findIndex((level) => level.name === name);
    const { left, right } = levels[at] as SearchLevel;
    return left.gain("front") + right.gain("front");
  };
  const more = (frontGain("bust") - Math.max(0, frontGain("underbust"))) / (Math.PI * layer.each);
  if (more < leastCupLayers) return [0];
  return Array.from({ length: most + 1 }, (_, i) => i);
}

const leastCupLayers = 2;

/** Cup pads lie at the bust. */
const cupLevel = levelNames.indexOf("bust");

/** A wrap may take a half over its reading by this much (mm). */
const wrapOver = 2;
const mostWrapTurns = 8;

function mostTurns({ left, right }: SearchLevel, layer: number): number {
  const least = Math.min(...[left, right].flatMap((side) => halves.map((half) => 2 * side.gain(half))));
  return Math.max(0, Math.min(mostWrapTurns, Math.floor((least + wrapOver) / (Math.PI * layer))));
}

const wrapsCost = ({ wraps }: WrapSet, { depths, gaps }: Search): number =>
  wraps.reduce((sum, { first, last, turns }) => sum + 1 + turns * runCost(depths, gaps, first, last), 0);

/** What the front and the back cost at least over these wraps: a tuning layer and a stack where no way does without. */
function leastCost({ turns }: WrapSet, { choices, discs }: Search): number {
  let sum = 0;
  for (const half of halves) {
    let [tuned, highest] = [false, 0];
    for (const [level, count] of turns.entries()) {
      const ways = choices(level, half, count, level === cupLevel && half === "front" ? Math.max(...discs) : 0);
      tuned ||= ways.every(({ left, right }) => left.layers > 0 || right.layers > 0);
      highest = Math.max(highest, Math.min(...ways.map(({ shared }) => shared)));
    }
    sum += (tuned ? 1 : 0) + (highest > 0 ? 1 : 0);
  }
  return sum;
}

/** What cup pads cost, and what it costs to leave them out where the shape wants them: only a plan of many pieces does. */
const cupsCost = 2;
const noCupsCost = 2.5;

/** Pieces beyond so many cost twice: nobody pins a dozen. */
const manyPieces = 9;

/** The cheapest shape with these wraps, if it costs less than a limit. */
function shapeWith(wraps: WrapSet, search: Search, limit: number): Candidate | null {
  const { choices, divide } = search;
  const half = (which: Half, discs: number, most: number) =>
    padHalf(
      wraps.turns.map((turns, level) => choices(level, which, turns, level === cupLevel ? discs : 0)),
      divide,
      most,
    );
  const around = wrapsCost(wraps, search);
  let best: Candidate | null = null;
  for (const discs of search.discs) {
    const cups = search.discs.length === 1 ? 0 : discs > 0 ? cupsCost : noCupsCost;
    const left: number = (best?.cost ?? limit) - around - cups;
    const front = half("front", discs, left);
    const back: PaddedHalf | null = front && half("back", discs, left - front.cost);
    if (!front || !back) continue;
    const pieces = wraps.wraps.length + front.pieces + back.pieces + (discs > 0 ? 1 : 0);
    const cost = around + cups + front.cost + back.cost + crossCost(front, back) + Math.max(0, pieces - manyPieces);
    if (cost < (best?.cost ?? limit)) best = { wraps, halves: { front, back }, discs, cost };
  }
  return best;
}

/** Layers that front and back both have could have been a wrap; very tall stacks cost more; and so does a girth that is missed. */
function crossCost(front: PaddedHalf, back: PaddedHalf): number {
  const most = ({ left, right }: { readonly left: HalfFit; readonly right: HalfFit }) =>
    Math.max(left.layers, right.layers);
  return front.choices.reduce((sum, choice, i) => {
    const other = back.choices[i] as LevelChoice;
    const [f, b] = [most(choice), most(other)];
    return (
      sum +
      0.08 * Math.max(0, Math.min(f, b) - 1) +
      0.03 * Math.max(0, Math.max(f, b) - 4) +
      girthCost(choice.miss + other.miss)
    );
  }, 0);
}
