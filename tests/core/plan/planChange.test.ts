import { expect, test } from "vitest";
import type { LevelName } from "../../../src/core/body/vocabulary";
import type { BelievedWorth } from "../../../src/core/calibration/believed";
import type { Batting } from "../../../src/core/material";
import type { Piece, PieceZone } from "../../../src/core/padding/piece";
import { planChange } from "../../../src/core/plan/planChange";
import { mm, ratio } from "../../../src/core/units";
import { layerOf, pieceOf, straightRows } from "../../support/samplePiece";

const drops: { readonly [level in LevelName]: number } = {
  bust: 230,
  underbust: 290,
  waist: 360,
  highHip: 460,
  fullHip: 560,
};
const taken: Batting = { name: "batting", layerThickness: mm(6), spread: ratio(0.2) };

const worth = (layer: number, squeeze: number): BelievedWorth => ({
  layer: mm(layer),
  spread: mm(0.3),
  least: mm(layer - 0.5),
  most: mm(layer + 0.5),
  squeeze: ratio(squeeze),
  squeezeSpread: ratio(0.05),
});

const piece = (zone: PieceZone, layers: number, from: number, to: number): Piece =>
  pieceOf(
    zone,
    Array.from({ length: layers }, () => layerOf(straightRows([from, to], -80, 80))),
    { id: `${zone}${from}` },
  );

test("the same pieces are no change", () => {
  const pieces = [piece("front", 2, 300, 420)];
  expect(planChange(pieces, pieces, drops, taken, worth(6, 0.1))).toEqual({ kind: "same" });
});

test("names the place where the layers to come differ most", () => {
  const before = [piece("front", 2, 300, 420), piece("back", 1, 300, 420), piece("around", 1, 200, 600)];
  const after = [piece("front", 4, 300, 420), piece("around", 1, 200, 600)];
  expect(planChange(before, after, drops, taken, worth(6, 0.1))).toEqual({
    kind: "more",
    layers: 2,
    zone: "front",
    level: "waist",
    because: "tape",
  });
});

test.each([
  ["a layer that is as thick as it was taken to be, though a stack gives way", "more", 6, 0.15, "tape"],
  ["a thinner layer", "more", 5.6, 0.1, "thinner"],
  ["a thicker layer that gives way as much as it is thicker", "fewer", 6.6, 0.1, "tape"],
  ["a layer that is thicker even in a stack", "fewer", 7.2, 0.1, "thicker"],
  ["a thicker layer where more are wanted", "more", 7.2, 0.1, "tape"],
] as const)("%s: %s layers", (_what, kind, layer, squeeze, because) => {
  const [few, many] = [[piece("front", 1, 300, 420)], [piece("front", 3, 300, 420)]];
  const [before, after] = kind === "more" ? [few, many] : [many, few];
  expect(planChange(before, after, drops, taken, worth(layer, squeeze))).toMatchObject({ kind, layers: 2, because });
});
