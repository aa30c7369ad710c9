import fc from "fast-check";
import { expect, test } from "vitest";
import { printPages } from "../../src/ui/print/printPages";
import { examplePlan } from "../gallery/examplePlan";

const [piece] = examplePlan.pieces;
const planWith = (count: number, limits: number) => ({
  pieces: Array.from({ length: count }, (_, i) => ({ ...(piece as NonNullable<typeof piece>), order: i + 1 })),
  shortfalls: [],
  seamShifts: Array.from({ length: limits }, () => ({ level: "waist", perSide: 5, towards: "front" }) as never),
});

test("an ordinary plan is one page", () => {
  expect(printPages(planWith(13, 2))).toHaveLength(1);
});

test("every piece is on exactly one page, in order, and only the last page is last", () => {
  let longest = 0;
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 12 }), (count, limits) => {
      const plan = planWith(count, limits);
      const pages = printPages(plan);
      longest = Math.max(longest, pages.length);
      expect(pages.flatMap(({ pieces }) => pieces.map(({ order }) => order))).toEqual(
        plan.pieces.map(({ order }) => order),
      );
      expect(pages.map(({ isLast }) => isLast)).toEqual(pages.map((_, i) => i === pages.length - 1));
      expect(pages.length).toBeGreaterThan(0);
    }),
  );
  expect(longest).toBeGreaterThan(2);
});
