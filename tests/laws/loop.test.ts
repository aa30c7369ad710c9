import { afterAll, describe, expect, test, vi } from "vitest";
import { type LoopRun, loopRun } from "../support/loopRun";
import { people } from "../support/people";
import { chance } from "../support/peopleChance";

/** Whole fittings carried out one after the other, and other work may share the machine. */
vi.setConfig({ testTimeout: 240_000 });

/**
 * Law 8, small: twelve made-up people padded to the end with a batting worth half to double its packet, a stack that gives up to a
 * quarter, a tape that errs by 3 to 6 mm, and no level read more than twice on the way. The figures over hundreds of
 * people are printed by `npm run study:loop`. Broken on purpose: the worth of a layer never learned; the tape's offset left out
 * of the next plan. Seen to fail.
 */
describe("law 8: the loop converges on the body with whatever is in the cupboard", () => {
  const everybody = people(120, 700).filter(
    ({ formKind, care }) => formKind === "measured" && (care === "all-arcs" || care === "left-and-right"),
  );
  const runs: LoopRun[] = [];
  afterAll(() => expect(runs).toHaveLength(12));

  test.each(Array.from({ length: 12 }, (_, i) => i))("person %i: every girth and arc within 12 mm", (i) => {
    const luck = chance(41_000 + i);
    const conditions = {
      worth: 2 ** luck.between(-1, 1),
      squeeze: luck.between(0, 0.25),
      onset: luck.pick(["secondLayer", "eighthLayer"] as const),
      readingError: luck.between(3, 6),
    };
    const run = loopRun(everybody[i] as (typeof everybody)[number], conditions, luck);
    runs.push(run);
    expect(run.misses.length).toBeGreaterThan(5);
    expect(run.misses.filter(({ miss }) => Math.abs(miss) > 12)).toEqual([]);
    expect(run.worthRatio).toBeGreaterThan(0.6);
    expect(run.worthRatio).toBeLessThan(1.6);
  });

  test("and the middle one of all their readings within 3 mm, nine in ten of them within 6", () => {
    const misses = runs.flatMap((run) => run.misses.map(({ miss }) => Math.abs(miss))).sort((a, b) => a - b);
    expect(misses.length).toBeGreaterThan(100);
    expect(misses[Math.floor(misses.length / 2)]).toBeLessThan(3);
    expect(misses[Math.floor(0.9 * misses.length)]).toBeLessThan(6);
  });
});
