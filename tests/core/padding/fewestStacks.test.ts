import fc from "fast-check";
import { expect, test } from "vitest";
import { leastCostOfStacks, longerKey, stackDivider } from "../../../src/core/padding/fewestStacks";
import { levelGaps } from "../../../src/core/padding/levelGaps";

const depths = [240, 330, 400, 490, 590];
const { cost } = stackDivider(depths, levelGaps(depths), 5);
const keyOf = (profile: readonly number[]) => profile.reduce(longerKey, 0);

/** Broken on purpose: a second rise not counted, and counted twice. Seen to fail. */
test("at a glance a profile costs a piece, or two where it rises anew, and its layers", () => {
  const glance = (...profile: number[]) => leastCostOfStacks(keyOf(profile));
  const layers = glance(0, 0, 2, 0, 0) - glance(0, 0, 1, 0, 0);
  expect(glance(0, 0, 0, 0, 0)).toBe(0);
  expect(glance(0, 0, 1, 0, 0)).toBeCloseTo(1 + layers, 9);
  expect(glance(1, 2, 3, 3, 1)).toBeCloseTo(1 + 3 * layers, 9);
  expect(glance(2, 0, 0, 1, 0)).toBeCloseTo(2 + 3 * layers, 9);
  expect(glance(1, 2, 1, 2, 1)).toBeCloseTo(2 + 3 * layers, 9);
  expect(glance(1, 0, 1, 0, 1)).toBeCloseTo(2 + 3 * layers, 9);
});

test("and never more than the stacks it is divided into", () => {
  let seen = 0;
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 5, maxLength: 5 }), (profile) => {
      const key = keyOf(profile);
      expect(leastCostOfStacks(key)).toBeLessThanOrEqual(cost(key).cost + 1e-9);
      seen += 1;
    }),
    { seed: 7, numRuns: 300 },
  );
  expect(seen).toBe(300);
});
