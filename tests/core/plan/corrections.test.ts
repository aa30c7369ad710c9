import { describe, expect, test } from "vitest";
import { type LevelName, levelNames, mapLevels } from "../../../src/core/body/vocabulary";
import type { Calibration } from "../../../src/core/calibration/calibration";
import { wrapRows } from "../../../src/core/padding/layPieces";
import { type LevelOutline, piecesThickness } from "../../../src/core/padding/layerThickness";
import type { Piece } from "../../../src/core/padding/piece";
import { basis } from "../../../src/core/plan/basis";
import { corrections } from "../../../src/core/plan/corrections";
import { tapeQuarters } from "../../../src/core/tape/tape";
import { mm } from "../../../src/core/units";
import { layerOf, pieceOf, straightRows } from "../../support/samplePiece";
import { body, form } from "./examplePerson";

const from = basis({ body, form });
const { depths, targets } = from;
const thickness = 7;

/** A wrap of one layer from so far above one level to as far below another: it adds pi times its thickness to front and back. */
const wrapAt = (first: LevelName, last: LevelName): Piece => {
  const rows = wrapRows(depths[first] - 30, depths[last] + 30, Object.values(depths), from.sectionAt);
  return pieceOf("around", [layerOf(rows, { wrap: true, thickness: mm(thickness), feather: mm(10) })]);
};
const added = Math.PI * thickness;

/** A panel of three layers in front of the waist, of one width from top to bottom, and what the tape reads more over it there. */
const panelWidth = 200;
const panelRows = straightRows(
  [-60, 0, 60].map((way) => depths.waist + way),
  -panelWidth / 2,
  panelWidth / 2,
);
const panel = pieceOf("front", Array(3).fill(layerOf(panelRows, { thickness: mm(thickness) })));
const overPanel = (() => {
  const waist = from.levelSections[levelNames.indexOf("waist")] as LevelOutline;
  const [bare, padded] = [[], [panel]].map((pieces) => tapeQuarters(waist.outline, piecesThickness(pieces, waist)));
  const front = (read: typeof bare) => (read?.leftFront ?? 0) + (read?.rightFront ?? 0);
  return front(padded) - front(bare);
})();

/** What is to be taken off where the front reads so much over what is aimed at, level by level. */
const correctionsFor = (pinned: readonly Piece[], over: { readonly [level in LevelName]?: number }) => {
  const levels = mapLevels((name) => {
    const { leftFront, rightFront, leftBack, rightBack } = targets[name].quarters;
    return {
      frontArc: { value: leftFront + rightFront + (over[name] ?? 0) },
      backArc: { value: leftBack + rightBack },
    };
  });
  const start = { pinned, offsets: [], layer: { each: thickness, bonus: 0 }, takenIds: [] };
  return corrections(from, start, pinned, { levels } as unknown as Calibration).map(({ level, half, how }) => ({
    level,
    half,
    how,
  }));
};

/**
 * Taken off as a whole where that leaves less to mend: three quarters of what a piece adds. Broken on purpose: never peeled,
 * always peeled, levels asked where the piece does not lie, and not asked where it does. Seen to fail.
 */
describe("a piece comes off", () => {
  test("where it is too much, however short the tape reads where it does not lie", () => {
    const pinned = [wrapAt("waist", "waist")];
    const elsewhere = { bust: -20, underbust: -20, highHip: -20, fullHip: -20 };
    expect(correctionsFor(pinned, { ...elsewhere, waist: 0.76 * added })).toEqual([
      { level: "waist", half: "front", how: { kind: "peel" } },
    ]);
    expect(correctionsFor(pinned, { ...elsewhere, waist: 0.73 * added })).toEqual([
      { level: "waist", half: "front", how: { kind: "pullThin" } },
    ]);
  });

  test("only if it is too much at every level where it lies", () => {
    const pinned = [wrapAt("bust", "fullHip")];
    const all = mapLevels(() => 0.8 * added);
    expect(correctionsFor(pinned, all).map(({ level, how }) => [level, how.kind])).toEqual(
      levelNames.map((level) => [level, "peel"]),
    );
    for (const name of levelNames)
      expect(correctionsFor(pinned, { ...all, [name]: 0 }).map(({ how }) => how.kind)).toEqual(
        Array(levelNames.length - 1).fill("pullThin"),
      );
  });
});

/** Broken on purpose: the whole share taken on each side, and no end to it. Seen to fail. */
test("a piece with edges is trimmed on each side by half of the share that is too much, and by a quarter of its width at most", () => {
  const eachSide = [0.3, 0.4, 0.6, 0.7].map((share) => {
    const [one] = correctionsFor([panel], { waist: share * overPanel });
    return one?.how.kind === "trim" ? one.how.eachSide : null;
  });
  expect(eachSide).toEqual([30, 40, 50, 50]);
  expect(correctionsFor([panel], { waist: 0.8 * overPanel })[0]?.how).toEqual({ kind: "peel" });
});
