import { describe, expect, it } from "vitest";
import { sectionOutline } from "../../../src/core/geometry/outline";
import { numberAt, stateSize } from "../../../src/core/learning/learningState";
import { type LearningLevel, levelTold, type QuarterValues } from "../../../src/core/learning/levelModel";
import { type LearningEvidence, posterior, predictor, type TapeEvidence } from "../../../src/core/learning/posterior";
import type { Piece } from "../../../src/core/padding/piece";
import type { Layer } from "../../../src/core/padding/layer";
import { mm, ratio } from "../../../src/core/units";

const girth: QuarterValues = [1, 1, 1, 1];
const front: QuarterValues = [1, 1, 0, 0];

/** A level whose breadth moves with its depth so that the girth nearly stays; exact enough to learn from. */
const level = (depthBelowNape: number): LearningLevel => ({
  depthBelowNape,
  outline: (exponent, lnBreadth) =>
    sectionOutline(
      {
        leftBreadth: 120 * Math.exp(lnBreadth),
        rightBreadth: 120 * Math.exp(lnBreadth),
        frontDepth: 90 * Math.exp(-lnBreadth),
        backDepth: 80 * Math.exp(-lnBreadth),
        frontExponent: 2.5 + exponent,
        backExponent: 2.5 + exponent,
      },
      24,
    ),
});

const layer = (wrap: boolean, half: number): Layer => ({
  batting: "building",
  thickness: mm(6),
  feather: mm(10),
  wrap,
  rows: [
    { depthBelowNape: mm(300), start: mm(-half), end: mm(half) },
    { depthBelowNape: mm(500), start: mm(-half), end: mm(half) },
  ],
});

const piece = (id: string, layers: readonly Layer[]): Piece => ({
  id,
  kind: layers[0]?.wrap ? "wrap" : "panel",
  zone: layers[0]?.wrap ? "around" : "front",
  level: "waist",
  number: 1,
  order: 1,
  pair: null,
  anchor: "centerFront",
  layers,
  cut: [],
});

const wraps = (count: number) =>
  piece(
    `wrap${count}`,
    Array.from({ length: count }, () => layer(true, 330)),
  );
const panel = piece("panel", [layer(false, 110), layer(false, 104)]);

const evidence = (readings: readonly TapeEvidence[], pieceIds: readonly string[] = []): LearningEvidence => ({
  levels: [level(400)],
  battings: {
    building: { name: "b", layerThickness: mm(6), relativeDeviation: ratio(0.35) },
    finishing: { name: "f", layerThickness: mm(3), relativeDeviation: ratio(0.35) },
  },
  bare: [{ girth: 3, frontLessBack: 6, leftLessRight: 4, exponent: 0.4, breadth: 0.02 }],
  readings,
  readingDeviation: 3.2,
  pieceIds,
});

/** What a tape reads where a state is the truth. */
function truly(changes: ReadonlyMap<number, number>, pieces: readonly Piece[], pieceIds: readonly string[] = []) {
  const from = posterior(evidence([], pieceIds));
  const state = from.state.map((value, i) => changes.get(i) ?? value);
  const { quarters } = levelTold(level(400), 0, pieces, from.layout, state);
  return (spans: QuarterValues) => quarters.reduce((sum, quarter, i) => sum + quarter * (spans[i] ?? 0), 0);
}

describe("what is known after the readings", () => {
  it("is the prior where nothing was read", () => {
    const { state, covariance, layout } = posterior(evidence([]));
    expect(stateSize(layout)).toBe(state.length);
    expect(Math.exp(state[numberAt.thickness("building")] as number)).toBeCloseTo(6 / 0.9, 9);
    expect(covariance[numberAt.breadth(0)]?.[numberAt.breadth(0)]).toBeCloseTo(0.02 ** 2, 12);
  });

  it("is the textbook's conjugate normal for readings of the bare form", () => {
    const bare = posterior(evidence([])).state;
    const { quarters } = levelTold(level(400), 0, [], { levels: 1, pieceIds: [] }, bare);
    const expected = quarters.reduce((sum, value) => sum + value, 0);
    const readings = [7, 9].map((more) => ({ level: 0, spans: girth, pieces: [], value: expected + more }));
    const after = predictor(posterior(evidence(readings)), [level(400)])({ level: 0, spans: girth, pieces: [] });
    // Normal mean with known variance: precisions add (any textbook; Gelman et al. 2013, section 2.5, from memory).
    const precision = 1 / 3 ** 2 + 2 / 3.2 ** 2;
    expect(after.value - expected).toBeCloseTo(16 / 3.2 ** 2 / precision, 3);
    expect(after.deviation).toBeCloseTo(precision ** -0.5, 3);
  });

  it("finds the thickness and the loss of a batting from turns of a wrap", () => {
    const truth = new Map([
      [numberAt.thickness("building"), Math.log(8.4)],
      [numberAt.loss("building"), 0.16],
    ]);
    const readings = [1, 2, 4, 6].flatMap((count) => {
      const pieces = [wraps(count)];
      const value = truly(truth, pieces)(girth);
      return [0, 1, 2].map(() => ({ level: 0, spans: girth, pieces, value }));
    });
    const known = posterior(evidence(readings));
    const unread = [wraps(5)];
    const { value, deviation } = predictor(known, [level(400)])({ level: 0, spans: girth, pieces: unread });
    expect(Math.abs(value - truly(truth, unread)(girth))).toBeLessThan(1.5);
    expect(deviation).toBeLessThan(3);
    // One layer and the loss trade against each other; what a stack of five comes to hardly does.
    const stack = (state: readonly number[]) =>
      Math.exp(state[numberAt.thickness("building")] as number) *
      (1 + 4 * (1 - (state[numberAt.loss("building")] as number)));
    expect(Math.abs(stack(known.state) / (8.4 * (1 + 4 * 0.84)) - 1)).toBeLessThan(0.02);
  });

  it("tells a seam that turns from the front's readings over a thick wrap, and not from the girth's", () => {
    const pieces = [wraps(6)];
    const read = truly(new Map([[numberAt.seamTurn(0), 0.15]]), pieces);
    const around = { level: 0, spans: girth, pieces, value: read(girth) };
    const ahead = { level: 0, spans: front, pieces, value: read(front) };
    const known = (readings: readonly TapeEvidence[]) =>
      posterior(evidence(readings)).state[numberAt.seamTurn(0)] as number;
    expect(Math.abs(known([around, around]))).toBeLessThan(0.01);
    expect(known([around, around, ahead, ahead])).toBeGreaterThan(0.03);
  });

  it("moves by what a hand's cut does at a panel's sides, and says nothing of a piece that lies elsewhere", () => {
    const pieces = [panel];
    const { layout, state } = posterior(evidence([], ["panel", "elsewhere"]));
    const { slopes } = levelTold(level(400), 0, pieces, layout, state);
    const cut = slopes.get(numberAt.cut(layout, 0)) as QuarterValues;
    expect(cut[0] + cut[1]).toBeGreaterThan(0);
    expect(slopes.has(numberAt.cut(layout, 1))).toBe(false);
  });

  it("agrees with the slopes of a finer difference", () => {
    const pieces = [wraps(3), panel];
    const { layout, state } = posterior(evidence([], ["panel"]));
    const told = levelTold(level(400), 0, pieces, layout, state);
    for (const number of [
      numberAt.thickness("building"),
      numberAt.loss("building"),
      numberAt.seamTurn(0),
      numberAt.quarter(0, 2),
    ]) {
      const moved = state.map((value, i) => (i === number ? value + 1e-4 : value));
      const { quarters } = levelTold(level(400), 0, pieces, layout, moved);
      const slope = told.slopes.get(number) as QuarterValues;
      for (const q of [0, 1, 2, 3]) {
        const fine = ((quarters[q] as number) - (told.quarters[q] as number)) / 1e-4;
        expect(Math.abs((slope[q] as number) - fine)).toBeLessThan(0.02 * Math.abs(fine) + 0.1);
      }
    }
  });
});
