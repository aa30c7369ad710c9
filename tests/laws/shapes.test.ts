import fc from "fast-check";
import { afterAll, describe, expect, test, vi } from "vitest";
import { padArea } from "../../src/core/padding/pinningOrder";
import type { Plan } from "../../src/core/plan/plan";
import { planFitting } from "../../src/core/plan/planFitting";
import type { Person } from "../support/people";
import { anybody, chances } from "./planned";

/** Many plans to a test, and other work may share the machine. */
vi.setConfig({ testTimeout: 120_000 });

/**
 * What every piece of every plan owes the hand that cuts and pins it. Broken on purpose: short runs of a hill kept and rows drawn 32 mm
 * apart; pieces of a zone pinned large to small. Seen to fail.
 */
describe("the shapes of the pieces", () => {
  const plans = new Map<number, Plan>();
  const planFor = (one: Person): Plan => {
    const plan = plans.get(one.seed) ?? planFitting(one);
    plans.set(one.seed, plan);
    return plan;
  };

  let pieces = 0;
  afterAll(() => expect(pieces).toBeGreaterThan(80));

  test("no piece is narrower or shorter than 40 mm, its rows are at most 20 mm apart and run downwards", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        for (const piece of planFor(one).pieces) {
          pieces++;
          const drops = piece.rows.map(({ drop }) => drop);
          for (const [i, drop] of drops.entries()) {
            if (i === 0) continue;
            expect(drop - (drops[i - 1] ?? 0)).toBeGreaterThan(0);
            expect(drop - (drops[i - 1] ?? 0)).toBeLessThanOrEqual(20);
          }
          for (const { start, end } of piece.rows) expect(end - start).toBeGreaterThanOrEqual(40 - 1e-6);
          // The smallest disc is 56 mm across, and its rows end where it is 41 mm wide.
          expect((drops.at(-1) ?? 0) - (drops[0] ?? 0)).toBeGreaterThanOrEqual(40);
          expect(piece.feather).toBeGreaterThanOrEqual(25);
          expect(Number.isInteger(piece.plies) && piece.plies >= 1).toBe(true);
        }
      }),
      chances(14),
    );
  });

  test("front pieces lie over centre front, back pieces over centre back, the filling of each cup on its own side", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        for (const { zone, anchor, rows } of planFor(one).pieces) {
          const { start, end } = rows.reduce((widest, row) =>
            row.end - row.start > widest.end - widest.start ? row : widest,
          );
          if (zone === "front" || zone === "back") expect(start <= 0 && end >= 0).toBe(true);
          expect(anchor).toBe(zone === "back" ? "centerBack" : undefined);
          if (zone === "leftCup") expect(start).toBeGreaterThan(-end);
          if (zone === "rightCup") expect(start).toBeLessThan(-end);
        }
      }),
      chances(14),
    );
  });

  test("rounds are pinned first, and the outermost piece of front and back is the last of its zone and its largest", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const plan = planFor(one);
        const rank = plan.pieces.map(({ zone }) => (zone === "round" ? 0 : 1));
        expect(rank).toEqual([...rank].sort());
        for (const zone of ["front", "back"] as const) {
          const areas = plan.pieces.filter((piece) => piece.zone === zone).map(padArea);
          expect(Math.max(0, ...areas) - (areas.at(-1) ?? 0)).toBeLessThan(1);
        }
      }),
      chances(14),
    );
  });
});
