import { describe, expect, test } from "vitest";
import type { Piece } from "../../../src/core/padding/piece";
import { useOfCut } from "../../../src/core/plan/cutUse";
import { mm } from "../../../src/core/units";

const piece = (id: string, half: number, changes: Partial<Piece> = {}): Piece => ({
  id,
  order: 1,
  zone: "front",
  batting: "building",
  plies: 1,
  thickness: mm(7),
  feather: mm(25),
  rows: [300, 350, 400].map((drop) => ({ drop: mm(drop), start: mm(-half), end: mm(half) })),
  cut: { shape: "panel", height: mm(100), widths: [] },
  ...changes,
});

/** Broken on purpose: a cut piece handed out twice. Seen to fail. */
describe("a cut piece for a piece of the new plan", () => {
  test("nothing cut, nothing used; nothing wanted, nothing asked", () => {
    expect(useOfCut([piece("a", 80)], [])).toEqual([null]);
    expect(useOfCut([], [piece("a", 80)])).toEqual([]);
  });

  test("the same outline, give or take a finger, as it is; a larger one to trim; a smaller one not at all", () => {
    expect(useOfCut([piece("new", 80)], [piece("old", 86)])).toEqual([{ pieceId: "old", fit: "asItIs" }]);
    expect(useOfCut([piece("new", 80)], [piece("old", 74)])).toEqual([{ pieceId: "old", fit: "asItIs" }]);
    expect(useOfCut([piece("new", 80)], [piece("old", 110)])).toEqual([{ pieceId: "old", fit: "trim" }]);
    expect(useOfCut([piece("new", 80)], [piece("old", 60)])).toEqual([null]);
  });

  test("of another zone, batting or number of plies it is another piece", () => {
    const others = [
      piece("zone", 80, { zone: "back" }),
      piece("batting", 80, { batting: "finishing" }),
      piece("plies", 80, { plies: 2 }),
    ];
    expect(useOfCut([piece("new", 80)], others)).toEqual([null]);
  });

  test("too short from top to bottom is too small", () => {
    const short = piece("short", 80, {
      rows: [330, 370].map((drop) => ({ drop: mm(drop), start: mm(-80), end: mm(80) })),
    });
    expect(useOfCut([piece("new", 80)], [short])).toEqual([null]);
  });

  test("is used once, and the nearest in size first", () => {
    const uses = useOfCut([piece("one", 80), piece("two", 80)], [piece("large", 120), piece("near", 84)]);
    expect(uses).toEqual([
      { pieceId: "near", fit: "asItIs" },
      { pieceId: "large", fit: "trim" },
    ]);
    expect(useOfCut([piece("one", 80), piece("two", 80)], [piece("only", 80)])).toEqual([
      { pieceId: "only", fit: "asItIs" },
      null,
    ]);
  });
});
