import { describe, expect, test } from "vitest";
import type { Piece } from "../../../src/core/padding/piece";
import { useOfCut } from "../../../src/core/plan/cutUse";
import { layerOf, pieceOf, straightRows } from "../../support/samplePiece";

const depths = [300, 350, 400];
const piece = (id: string, half: number, changes: Partial<Piece> = {}): Piece =>
  pieceOf("front", [layerOf(straightRows(depths, -half, half))], { id, ...changes });

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

  test("of another zone, batting or number of layers it is another piece", () => {
    const others = [
      piece("zone", 80, { zone: "back" }),
      piece("batting", 80, { layers: [layerOf(straightRows(depths, -80, 80), { batting: "finishing" })] }),
      piece("layers", 80, { layers: [1, 2].map(() => layerOf(straightRows(depths, -80, 80))) }),
      piece("kind", 80, { kind: "tuning" }),
    ];
    expect(useOfCut([piece("new", 80)], others)).toEqual([null]);
  });

  test("too short from top to bottom is too small", () => {
    const short = piece("short", 80, { layers: [layerOf(straightRows([330, 370], -80, 80))] });
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
