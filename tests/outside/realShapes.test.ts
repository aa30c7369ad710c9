import { describe, expect, test } from "vitest";
import { supportsOf } from "../../src/core/geometry/support";
import { quarterLengths } from "../../src/core/geometry/outline";
import { checkedLevelNames } from "../support/planCheckerFile";
import { bodyWithHeights, onLines, type Scenario, scenarios } from "../support/trueScenarios";
import { statedLevels, trueBodies, trueForms } from "../support/trueShapes";
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
} from "../support/trueTrials";

/**
 * Plans laid on bodies and forms that nobody here drew (shared/real-sections.json: made-up women and slim torsos as
 * three-dimensional meshes, CC0, with source and caveats in the file). Surface: the convex hull of the bare slice. The tape
 * reads at the body's true lines. Pairs where the form is larger than the body at a line, or ends above it, are left out.
 */
const missesOf = (given: Scenario["given"], pairs = truePairs): readonly Miss[] =>
  pairs.flatMap((pair) => levelMisses(pair, planOfGiven(given(pair))));

const known = new Map<string, readonly Miss[]>();
const missesFor = (id: Scenario["id"]): readonly Miss[] => {
  const scenario = scenarios.find((one) => one.id === id);
  if (scenario === undefined) throw new Error(id);
  const misses = known.get(id) ?? missesOf(scenario.given);
  known.set(id, misses);
  return misses;
};
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

/** Goals of the design, p95 and worst in mm; where a figure is missed, the best that was reached is in the design page. */
describe("first plans at the body's lines", () => {
  test("read on the lines with breadths: girths within 8, worst 20; fronts as well", () => {
    const misses = missesFor("linesAndBreadths");
    expect(girths(misses).p95).toBeLessThanOrEqual(8);
    expect(girths(misses).worst).toBeLessThanOrEqual(20);
    expect(fronts(misses).p95).toBeLessThanOrEqual(8);
    expect(fronts(misses).worst).toBeLessThanOrEqual(20);
  });

  test("with breadths and depths: worst 18", () => {
    const misses = missesFor("linesBreadthsDepths");
    expect(girths(misses).p95).toBeLessThanOrEqual(8.6);
    expect(girths(misses).worst).toBeLessThanOrEqual(18);
    expect(fronts(misses).p95).toBeLessThanOrEqual(8);
  });

  test("with true heights and the form at its own levels: p95 20", () => {
    expect(girths(missesFor("ownLevels")).p95).toBeLessThanOrEqual(20);
  });

  test("a reading more never makes it worse: in the mean by more than noise, at the worst by more than 3 mm", () => {
    const order = ["fewest", "byTape", "ownLevels", "lines", "linesAndBreadths", "linesBreadthsDepths"] as const;
    order.slice(1).forEach((id, i) => {
      const [less, more] = [missesFor(order[i] as Scenario["id"]), missesFor(id)];
      expect(mean(more), id).toBeLessThanOrEqual(mean(less) + 0.3);
      expect(girths(more).worst, id).toBeLessThanOrEqual(girths(less).worst + 3);
      expect(fronts(more).worst, id).toBeLessThanOrEqual(fronts(less).worst + 3);
    });
  });

  test("nine in ten readings lie within what a plan says it may miss by, draft or not", () => {
    for (const { id, given } of scenarios) {
      const within = truePairs.flatMap((pair) => {
        const plan = planOfGiven(given(pair));
        return levelMisses(pair, plan).flatMap(({ girth, front }) => [
          Math.abs(girth) <= plan.mayMissMm,
          Math.abs(front) <= plan.mayMissMm,
        ]);
      });
      const share = within.filter(Boolean).length / within.length;
      expect(share, id).toBeGreaterThanOrEqual(0.85);
    }
  });
});

/** The same goals must fail where the reckoning is wrong. */
describe("planted faults are seen", () => {
  const few = truePairs.filter((_, i) => i % 4 === 0);
  const right = ({ body, form }: TruePair) => ({
    body: bodyWithHeights({ body, form }),
    form: onLines({ body, form }, breadths),
  });

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
    expect(fronts(missesOf(right, few)).p95).toBeLessThanOrEqual(8);
    expect(fronts(missesOf(swapped, few)).p95).toBeGreaterThan(20);
  });

  test("a height 10 mm wrong", () => {
    const wrong = (pair: TruePair) => {
      const { body, form } = right(pair);
      const lower = Object.fromEntries(
        checkedLevelNames.map((level) => [
          level,
          { ...pair.body.levels[level], depthBelowNape: pair.body.levels[level].depthBelowNape + 10 },
        ]),
      ) as TruePair["body"]["levels"];
      return {
        body: { ...body, ...heights(lower) },
        form: { ...form, ...girthsAndFronts(readingsAt(pair.form, lower)) },
      };
    };
    expect(girths(missesOf(wrong, few)).p95).toBeGreaterThan(12);
  });
});
