import fc from "fast-check";
import { afterAll, describe, expect, test, vi } from "vitest";
import { anybody, chances, planFor } from "./planned";

/** Many plans to a test, and other work may share the machine. */
vi.setConfig({ testTimeout: 120_000 });

/**
 * What every piece of every plan owes the hand that cuts and pins it. Broken on purpose: short runs of a hill kept; rows drawn 32 mm
 * apart; the outermost piece in front sorted by its area alone. Seen to fail.
 */
describe("the shapes of the pieces", () => {
  let pieces = 0;
  afterAll(() => expect(pieces).toBeGreaterThan(80));

  test("no piece is narrower or shorter than 40 mm, its rows are at most 20 mm apart and run downwards", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        for (const piece of planFor(one).pieces) {
          pieces++;
          const drops = piece.rows.map(({ dropMm }) => dropMm);
          for (const [i, drop] of drops.entries()) {
            if (i === 0) continue;
            expect(drop - (drops[i - 1] ?? 0)).toBeGreaterThan(0);
            expect(drop - (drops[i - 1] ?? 0)).toBeLessThanOrEqual(20.1);
          }
          for (const { startMm, endMm } of piece.rows) expect(endMm - startMm).toBeGreaterThanOrEqual(39.8);
          expect((drops.at(-1) ?? 0) - (drops[0] ?? 0)).toBeGreaterThanOrEqual(39.8);
          expect(piece.featherMm).toBeGreaterThanOrEqual(25);
          expect(Number.isInteger(piece.plies) && piece.plies >= 1).toBe(true);
        }
      }),
      chances(20),
    );
  });

  test("front pieces lie over centre front and clear of the side seams, back pieces over centre back", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        for (const { zone, rows } of planFor(one).pieces) {
          for (const { startMm, endMm } of rows) {
            if (zone === "front") expect(Math.abs(startMm + endMm)).toBeLessThan(0.8 * (endMm - startMm));
            // Over centre back a piece runs past half the girth, which is more than 250 mm on any form.
            if (zone === "back") expect(endMm).toBeGreaterThan(250);
            if (zone === "leftCup") expect(startMm + endMm).toBeGreaterThan(0);
            if (zone === "rightCup") expect(startMm + endMm).toBeLessThan(0);
          }
        }
      }),
      chances(20),
    );
  });

  test("rounds are pinned first, and the outermost piece of front and back is the last of its zone and its largest", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const plan = planFor(one);
        const rank = plan.pieces.map(({ zone }) => (zone === "round" ? 0 : 1));
        expect(rank).toEqual([...rank].sort());
        for (const zone of ["front", "back"] as const) {
          const areas = plan.pieces
            .filter((piece) => piece.zone === zone)
            .map(({ rows }) =>
              rows.slice(1).reduce((sum, row, i) => {
                const above = rows[i] ?? row;
                return (
                  sum + ((row.dropMm - above.dropMm) * (row.endMm - row.startMm + above.endMm - above.startMm)) / 2
                );
              }, 0),
            );
          expect(Math.max(0, ...areas) - (areas.at(-1) ?? 0)).toBeLessThan(60);
        }
      }),
      chances(20),
    );
  });
});
