import { afterAll, describe, expect, test, vi } from "vitest";
import { drawRoom, type JobWalk, walkJob } from "../tools/jobWalk";
import { people } from "../tools/people";
import { chance } from "../tools/peopleChance";

/** Whole fittings carried out one after the other, and other work may share the machine. */
vi.setConfig({ testTimeout: 240_000 });

/**
 * Law 8, small: made-up people padded to the end by the next step alone, with a batting that is not what its packet says, stacks
 * that lose, hands that cut, place and feather as hands do, and a tape that errs by 3 mm. The figures over many people
 * are printed by `npm run study:loop`. Broken on purpose: the thickness of a layer never learned. Seen to fail.
 */
describe("law 8: the loop converges on the body with whatever is in the cupboard", () => {
  const everybody = people(240, 700).filter(({ formKind, care }) => formKind === "measured" && care === "all-arcs");
  const walks: JobWalk[] = [];
  const jobs = 16;
  afterAll(() => expect(walks).toHaveLength(jobs));

  test.each(Array.from({ length: jobs }, (_, i) => i))("person %i: every girth and arc within 12 mm", (i) => {
    const walk = walkJob(everybody[i] as (typeof everybody)[number], drawRoom(chance(41_000 + i)));
    walks.push(walk);
    expect(walk.misses.length).toBeGreaterThan(5);
    expect(walk.misses.filter(({ miss }) => Math.abs(miss) > 12)).toEqual([]);
    expect(walk.steps.length).toBeLessThanOrEqual(25 + 8 * walk.pieces);
  });

  test("and nineteen in twenty of all their readings within 6 mm, as intervals hold them", () => {
    const misses = walks.flatMap((walk) => walk.misses.map(({ miss }) => Math.abs(miss)));
    expect(misses.length).toBeGreaterThan(160);
    expect(misses.filter((miss) => miss <= 6).length / misses.length).toBeGreaterThan(0.95);
    const held = walks.flatMap((walk) => walk.held);
    expect(held.filter(Boolean).length / held.length).toBeGreaterThan(0.85);
  });
});
