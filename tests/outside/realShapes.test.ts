import { describe, expect, test, vi } from "vitest";
import { supportsOf } from "../../src/core/geometry/support";
import { quarterLengths } from "../../src/core/geometry/outline";
import { checkedLevelNames } from "../tools/planCheckerFile";
import { type PairPlan, pairPlan, shareWithin } from "../tools/trueMayMiss";
import { outlineMiss } from "../tools/trueOutline";
import { bodyWithHeights, onLines, type Scenario, scenarios } from "../tools/trueScenarios";
import { statedLevels, trueBodies, trueForms } from "../tools/trueShapes";
import {
  breadths,
  type Entries,
  girthsAndFronts,
  heights,
  leftOut,
  levelMisses,
  type Miss,
  planOfGiven,
  readingsAt,
  spreadOf,
  type TruePair,
  truePairs,
} from "../tools/trueTrials";

/** Hundreds of plans, and other work may share the machine. */
vi.setConfig({ testTimeout: 300_000 });

/**
 * Plans laid on bodies and forms that nobody here drew (shared/real-sections.json: made-up women and slim torsos as
 * three-dimensional meshes, CC0, with source and caveats in the file). Surface: the convex hull of the bare slice. The tape
 * reads at the body's true lines. Pairs where the form is larger than the body at a line, or ends above it, are left out.
 */
const missesOf = (given: Scenario["given"], pairs = truePairs): readonly Miss[] =>
  pairs.flatMap((pair) => levelMisses(pair, planOfGiven(given(pair))));

const known = new Map<string, readonly PairPlan[]>();
const plansFor = (id: Scenario["id"]): readonly PairPlan[] => {
  const scenario = scenarios.find((one) => one.id === id);
  if (scenario === undefined) throw new Error(id);
  const plans = known.get(id) ?? truePairs.map((pair) => pairPlan(pair, scenario.given(pair)));
  known.set(id, plans);
  return plans;
};
const missesFor = (id: Scenario["id"]): readonly Miss[] => plansFor(id).flatMap(({ misses }) => misses);
const girths = (misses: readonly Miss[]) => spreadOf(misses.map(({ girth }) => girth));
const fronts = (misses: readonly Miss[]) => spreadOf(misses.map(({ front }) => front));
const mean = (misses: readonly Miss[]) => misses.reduce((sum, { girth }) => sum + Math.abs(girth), 0) / misses.length;

describe("the true shapes", () => {
  test("a tape over the slices reads what the file says of its levels, but for corners that its outlines cut", () => {
    for (const { id, levels } of statedLevels) {
      const shape = [...trueBodies, ...trueForms].find((one) => one.id === id);
      for (const level of checkedLevelNames) {
        const [read, stated] = [shape?.levels[level], levels[level]];
        if (read === undefined) throw new Error(id);
        expect(Math.abs(read.girth - stated.girthMm), `${id} ${level}`).toBeLessThan(level === "bust" ? 5 : 2);
        expect(Math.abs(read.front - stated.frontArcMm), `${id} ${level}`).toBeLessThan(level === "bust" ? 5 : 1.5);
        expect(read.depthBelowNape).toBe(stated.dropMm);
      }
    }
  });

  test("enough pairs are left, and those that are not say why", () => {
    expect(truePairs.length).toBeGreaterThanOrEqual(30);
    expect(truePairs.length + leftOut.length).toBe(trueBodies.length * trueForms.length);
    for (const { why } of leftOut) expect(why).toMatch(/below the form|larger/);
  });

  test("a curve known by its support in 72 directions reads a true hull's girth and front", () => {
    for (const shape of [...trueBodies, ...trueForms]) {
      for (const level of checkedLevelNames) {
        const { girth, front, depthBelowNape } = shape.levels[level];
        const { ring, seams } = shape.sectionAt(depthBelowNape);
        const seam = (seams[0] + seams[1]) / 2;
        const support = Array.from({ length: 72 }, (_, i) => {
          const [c, s] = [Math.cos((2 * Math.PI * i) / 72), Math.sin((2 * Math.PI * i) / 72)];
          return Math.max(...ring.map(({ x, y }) => x * c + (y - seam) * s));
        });
        const quarters = quarterLengths({ support });
        const ours = quarters.leftFront + quarters.rightFront;
        expect(Math.abs(ours + quarters.leftBack + quarters.rightBack - girth)).toBeLessThan(1);
        expect(Math.abs(ours - front)).toBeLessThan(1);
        expect(supportsOf({ support }, 72)).toEqual(support.map((value) => expect.closeTo(value, 6)));
      }
    }
  });
});

/** Goals of the design, p95 and worst in mm. */
describe("first plans at the body's lines", () => {
  test("read on the lines with breadths: girths within 8, worst 20; fronts as well", () => {
    const misses = missesFor("linesAndBreadths");
    expect(girths(misses).p95).toBeLessThanOrEqual(8);
    expect(girths(misses).worst).toBeLessThanOrEqual(20);
    expect(fronts(misses).p95).toBeLessThanOrEqual(8);
    expect(fronts(misses).worst).toBeLessThanOrEqual(20);
  });

  test("with breadths and depths: within 8, worst 18", () => {
    const misses = missesFor("linesBreadthsDepths");
    expect(girths(misses).p95).toBeLessThanOrEqual(8);
    expect(girths(misses).worst).toBeLessThanOrEqual(18);
    expect(fronts(misses).p95).toBeLessThanOrEqual(8);
  });

  test("with true heights and the form at its own levels: p95 20", () => {
    expect(girths(missesFor("ownLevels")).p95).toBeLessThanOrEqual(20);
  });

  test("a reading more never makes it worse: in the mean by more than noise, at the worst by more than 3 mm", () => {
    for (const [before, after] of readMore) {
      const [less, more] = [missesFor(before), missesFor(after)];
      expect(mean(more), after).toBeLessThanOrEqual(mean(less) + 0.3);
      // Lines marked on the form where the body's heights are guesses are read truly in the wrong place: one reading in 320 is then far off.
      if (after === "linesBodyByTape") continue;
      expect(girths(more).worst, after).toBeLessThanOrEqual(girths(less).worst + 3);
      expect(fronts(more).worst, after).toBeLessThanOrEqual(fronts(less).worst + 3);
    }
  });

  test("nine in ten readings lie within what a plan says it may miss by, draft or not, and it does not say far too much", () => {
    const all = shareWithin(scenarios.flatMap(({ id }) => plansFor(id)));
    expect(all).toBeGreaterThanOrEqual(0.9);
    expect(all).toBeLessThanOrEqual(0.96);
    for (const { id } of scenarios) expect(shareWithin(plansFor(id)), id).toBeGreaterThanOrEqual(0.865);
  });
});

/** What is read more from one to the next. */
const readMore: readonly (readonly [Scenario["id"], Scenario["id"]])[] = [
  ["fewest", "byTape"],
  ["byTape", "linesBodyByTape"],
  ["byTape", "ownLevels"],
  ["ownLevels", "lines"],
  ["linesBodyByTape", "lines"],
  ["lines", "linesAndBreadths"],
  ["linesAndBreadths", "linesBreadthsDepths"],
  ["linesAndBreadths", "linesAndLowerBreast"],
];

/** The same goals must fail where the reckoning is wrong. */
describe("planted faults are seen", () => {
  const few = truePairs.filter((_, i) => i % 4 === 0);
  const right = ({ body, form }: TruePair) => ({
    body: bodyWithHeights({ body, form }),
    form: onLines({ body, form }, breadths),
  });
  const missesOfRight = missesOf(right, few);

  test("front and back swapped", () => {
    const swapped = (pair: TruePair) => {
      const { body, form } = right(pair);
      const other = (levels: ReturnType<typeof readingsAt>): Entries =>
        Object.fromEntries(checkedLevelNames.map((level) => [`${level}FrontArc`, levels[level].back]));
      return {
        body: { ...body, ...other(pair.body.levels) },
        form: { ...form, ...other(readingsAt(pair.form, pair.body.levels)) },
      };
    };
    expect(fronts(missesOfRight).p95).toBeLessThanOrEqual(8);
    expect(fronts(missesOf(swapped, few)).p95).toBeGreaterThan(20);
  });

  test.each(checkedLevelNames)("one height 10 mm wrong, the %s's", (level) => {
    const wrong = (pair: TruePair) => {
      const { body, form } = right(pair);
      const lower = { ...pair.body.levels[level], depthBelowNape: pair.body.levels[level].depthBelowNape + 10 };
      const levels = { ...pair.body.levels, [level]: lower };
      return {
        body: { ...body, ...heights(levels) },
        form: { ...form, ...girthsAndFronts(readingsAt(pair.form, levels)) },
      };
    };
    const there = (misses: readonly Miss[]) => misses.filter((miss) => miss.level === level);
    const [before, after] = [missesOfRight, missesOf(wrong, few)].map(there);
    expect(mean(after ?? [])).toBeGreaterThan(mean(before ?? []) + 1);
  });

  test("heights ignored: the form's own levels taken for the person's lines", () => {
    const byName = (pair: TruePair) => ({
      ...right(pair),
      form: { readAtBodyLines: true, ...girthsAndFronts(pair.form.levels) },
    });
    expect(girths(missesOf(byName, few)).p95).toBeGreaterThan(20);
  });

  /** The outline at the underbust and below, in the root mean square over all pairs (mm). */
  const outline = (id: Scenario["id"]) => {
    const misses = plansFor(id).flatMap(({ pair, plan }) =>
      plan.levels
        .filter(({ name }) => name !== "bust")
        .map(({ form, depthBelowNapeMm }) => outlineMiss(form, pair.form, depthBelowNapeMm)),
    );
    return Math.sqrt(misses.reduce((sum, miss) => sum + miss * miss, 0) / misses.length);
  };

  test("depth ignored: the form's depths bring the fronts and its outline nearer than breadths alone", () => {
    // By 0.28 of 4.5 mm: since outlines are drawn finer, breadths alone leave less for depths to gain.
    expect(fronts(missesFor("linesBreadthsDepths")).p95).toBeLessThan(fronts(missesFor("linesAndBreadths")).p95 - 0.2);
    expect(outline("linesBreadthsDepths")).toBeLessThan(2.4);
    expect(outline("linesAndBreadths")).toBeGreaterThan(2.4);
    expect(outline("lines")).toBeGreaterThan(3);
  });
});
