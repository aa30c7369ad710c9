import { planOfText } from "../../src/command/planOfText";
import { torsoReadings } from "../../src/core/body/levelReadings";
import type { Measurements } from "../../src/core/body/measurements";
import { checkedLevelNames } from "./planCheckerFile";
import { trueBodies, trueForms, type TrueReading, trueReading, type TrueShape } from "./trueShapes";
import { type LaidPlan, readAtLevel, readOver } from "./trueTape";

/**
 * Every body of the true shapes on every form: what a person reads of both with a tape becomes a fitting file, the plan
 * is asked for through the same door as the command, its pieces are laid on the true form and read at the body's true
 * lines. Batting of 6 mm, known exactly; hands that make no errors.
 */
export interface TruePair {
  readonly body: TrueShape;
  readonly form: TrueShape;
}

export type Entries = { readonly [name: string]: number | boolean };

/** What a person typed: both sets of readings, in millimeters. */
export interface Given {
  readonly body: Entries;
  readonly form: Entries;
}

/** One level of one pair: how far the laid plan misses the body (mm), signed. */
export interface Miss {
  readonly pair: string;
  readonly level: string;
  readonly girth: number;
  readonly front: number;
}

/** A form is too large at a line if it is larger by more than this (mm): closer than a tape is read. */
const larger = 1;

/** Why no plan can be right for a pair, or nothing. */
export function whyLeftOut({ body, form }: TruePair): string | null {
  for (const level of checkedLevelNames) {
    const { depthBelowNape, girth } = body.levels[level];
    if (depthBelowNape > form.bottom) return `${level} lies below the form`;
    if (depthBelowNape < form.top) return `${level} lies above the form`;
    const over = trueReading(form, depthBelowNape).girth - girth;
    if (over > larger) return `the form is ${over.toFixed(0)} mm larger at the ${level}`;
  }
  return null;
}

const all: readonly TruePair[] = trueBodies.flatMap((body) => trueForms.map((form) => ({ body, form })));

export const pairName = ({ body, form }: TruePair): string => `${body.id} on ${form.id}`;

export const leftOut = all.flatMap((pair) => {
  const why = whyLeftOut(pair);
  return why === null ? [] : [{ pair: pairName(pair), why }];
});

export const truePairs: readonly TruePair[] = all.filter((pair) => whyLeftOut(pair) === null);

export const layer = 6;

export function planOfGiven(given: Given): LaidPlan {
  const file = {
    version: 1,
    unit: "mm",
    ...given,
    batting: { name: "batting", layerThickness: layer, spread: 0.3 },
  };
  const plan = planOfText(JSON.stringify(file));
  if (!plan.ok) throw new Error(plan.problem.join(" "));
  return plan.value as unknown as LaidPlan;
}

/** The misses of a plan at the body's five lines. */
export function levelMisses(pair: TruePair, plan: LaidPlan): readonly Miss[] {
  return checkedLevelNames.map((level) => {
    const want = pair.body.levels[level];
    const read = readAtLevel(plan, pair.form, level, want.depthBelowNape);
    return { pair: pairName(pair), level, girth: read.girth - want.girth, front: read.front - want.front };
  });
}

/** Shares of the way from one line to the next at which the shape between them is read. */
export const between = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

/** The misses of a plan between the lines; where the form is larger than the body there, nothing can be asked. */
export function missesBetween(pair: TruePair, plan: LaidPlan): readonly Miss[] {
  return checkedLevelNames.slice(1).flatMap((level, i) => {
    const above = checkedLevelNames[i] as (typeof checkedLevelNames)[number];
    const [from, to] = [pair.body.levels[above].depthBelowNape, pair.body.levels[level].depthBelowNape];
    return between.flatMap((share): readonly Miss[] => {
      const depth = from + share * (to - from);
      const want = trueReading(pair.body, depth);
      if (trueReading(pair.form, depth).girth > want.girth) return [];
      const read = readOver(plan, pair.form, depth);
      return [
        {
          pair: pairName(pair),
          level: `${above} to ${level}`,
          girth: read.girth - want.girth,
          front: read.front - want.front,
        },
      ];
    });
  });
}

/** The 50th, 95th and the worst of a list of misses, without their signs (mm). */
export function spreadOf(misses: readonly number[]): {
  readonly p50: number;
  readonly p95: number;
  readonly worst: number;
} {
  const sorted = misses.map(Math.abs).toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
  return { p50: at(0.5), p95: at(0.95), worst: sorted.at(-1) ?? 0 };
}

type Level = (typeof checkedLevelNames)[number];
type LevelReadings = { readonly [level in Level]: TrueReading };

/** What a tape reads of a shape at the depths of some levels. */
export const readingsAt = (shape: TrueShape, depths: LevelReadings): LevelReadings =>
  readingsOnLines(shape, (level) => depths[level].depthBelowNape);

/** What a tape reads of a shape on lines marked at some depths; below its lowest slice it is read there, as an edge is. */
export const readingsOnLines = (shape: TrueShape, depthOf: (level: Level) => number): LevelReadings =>
  Object.fromEntries(
    checkedLevelNames.map((level) => [
      level,
      trueReading(shape, Math.max(shape.top, Math.min(shape.bottom, depthOf(level)))),
    ]),
  ) as LevelReadings;

/** Where the tool takes the lines of a body to lie, by what was read of the body alone: where a person marks them on the form. */
export function markedDepths(body: Entries): (level: Level) => number {
  const { levels } = torsoReadings(body as unknown as Measurements);
  return (level) => levels[level].depthBelowNape.value;
}

const each = (levels: LevelReadings, entry: (level: Level, reading: TrueReading) => Entries): Entries =>
  Object.assign({}, ...checkedLevelNames.map((level) => entry(level, levels[level]))) as Entries;

const tenth = (value: number): number => Math.round(10 * value) / 10;

/** Girth and front at each level, as a tape reads them. */
export const girthsAndFronts = (levels: LevelReadings): Entries =>
  each(levels, (level, { girth, front }) => ({ [`${level}Girth`]: tenth(girth), [`${level}FrontArc`]: tenth(front) }));

export const fronts = (levels: LevelReadings): Entries =>
  each(levels, (level, { front }) => ({ [`${level}FrontArc`]: tenth(front) }));

export const breadths = (levels: LevelReadings): Entries =>
  each(levels, (level, { breadth }) => ({ [`${level}Breadth`]: tenth(breadth) }));

export const depths = (levels: LevelReadings): Entries =>
  each(levels, (level, { depth }) => ({ [`${level}Depth`]: tenth(depth) }));

/** The lengths that a tape reads over the surface. */
export const surfaceLengths = ({ lengths }: TrueShape): Entries => ({
  napeToWaist: tenth(lengths.napeToWaist),
  shoulderToApex: tenth(lengths.shoulderToApex),
  apexToApex: tenth(lengths.apexToApex),
  waistToHighHip: tenth(lengths.waistToHighHip),
  waistToFullHip: tenth(lengths.waistToFullHip),
});

/** Heights above the floor, the nape at an invented one. */
export const heights = (levels: LevelReadings, nape = 1400): Entries => ({
  napeHeight: nape,
  ...each(levels, (level, { depthBelowNape }) => ({ [`${level}Height`]: tenth(nape - depthBelowNape) })),
});

/** The girth three quarters of the way from the bust line to the underbust line. */
export const lowerBreast = (shape: TrueShape, { bust, underbust }: LevelReadings): Entries => {
  const depth = bust.depthBelowNape + 0.75 * (underbust.depthBelowNape - bust.depthBelowNape);
  return { lowerBreastGirth: tenth(trueReading(shape, depth).girth) };
};
