import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { levelNames } from "../../../src/core/body/vocabulary";
import { calibrate } from "../../../src/core/calibration/calibrate";
import type { PosteriorThickness } from "../../../src/core/calibration/calibration";
import type { LearnedPiece } from "../../../src/core/learning/layerCounts";
import { chance } from "../../tools/peopleChance";
import { bareGirth, batting, evidenceOf, read, deviations, waistRead, waistRound } from "./roundForm";

/**
 * What the readings teach. The form is a circle, so that every reading is known without the core: n layers of a thickness c
 * that loses the share s in each further layer stand out by c (1 + (n - 1)(1 - s)), and the girth by 2 pi times that.
 */
const stackGirth = (layers: number, layer: number, stackCompression: number) =>
  bareGirth + 2 * Math.PI * layer * (1 + (layers - 1) * (1 - stackCompression));

const [one, two, four] = [waistRound(1), waistRound(2), waistRound(4)];
const thin = waistRound(1, "finishing");

/** A tape that errs by a tenth of a millimetre, on a form that is known as well. */
const perfect = { readingError: 0.1, bareDeviations: deviations(0.1, 0.1) };

const logDeviation = ({ layer, standardDeviation }: PosteriorThickness) => standardDeviation / layer;

/** Broken on purpose: one round of iteration; what is known beforehand left out of the pull. Seen to fail. */
describe("a trial of one layer", () => {
  test("read with a perfect tape tells the layer, whatever the packet says", () => {
    for (const layer of [3.5, 7, 10, 14]) {
      const { building } = calibrate(evidenceOf({ ...perfect, rereads: [waistRead(stackGirth(1, layer, 0), [one])] }));
      expect(Math.abs(building.layer - layer)).toBeLessThan(0.06);
      expect(building.standardDeviation).toBeLessThan(0.06);
      expect(building.least).toBeLessThan(layer);
      expect(building.most).toBeGreaterThan(layer);
    }
  });

  test("read with an ordinary tape lies between the packet and the tape, and is surer than either", () => {
    const packet = calibrate(evidenceOf({})).building;
    const layer = 12;
    const { building } = calibrate(evidenceOf({ rereads: [waistRead(stackGirth(1, layer, 0), [one])] }));
    expect(building.layer).toBeGreaterThan(packet.layer);
    expect(building.layer).toBeLessThan(layer);
    // The gain is the difference of two readings of 5 mm each, and a whole turn.
    expect(building.standardDeviation).toBeLessThan(Math.hypot(5, 5) / (2 * Math.PI));
    expect(building.standardDeviation).toBeLessThan(packet.standardDeviation / 2);
  });

  test("cannot tell what a stack presses out", () => {
    const before = calibrate(evidenceOf({})).building;
    const { building } = calibrate(evidenceOf({ ...perfect, rereads: [waistRead(stackGirth(1, 9, 0), [one])] }));
    expect(building.stackCompression).toBeCloseTo(before.stackCompression, 6);
    expect(building.stackCompressionDeviation).toBeCloseTo(before.stackCompressionDeviation, 6);
  });
});

/** Broken on purpose: every reading given a slope for battings that do not lie there. Seen to fail. */
describe("a reading that can tell nothing of a batting", () => {
  const before = calibrate(evidenceOf({}));

  test("does not move it: nothing is pinned, or nothing at that level", () => {
    const rereads = [read({ waistGirth: bareGirth + 20, bustFrontArc: 350 }, []), read({ bustGirth: 730 }, [two])];
    const after = calibrate(evidenceOf({ rereads }));
    for (const role of ["building", "finishing"] as const) {
      expect(after[role].layer).toBeCloseTo(before[role].layer, 9);
      expect(after[role].standardDeviation).toBeCloseTo(before[role].standardDeviation, 9);
      expect(after[role].stackCompression).toBeCloseTo(before[role].stackCompression, 9);
    }
    expect(after.levels.waist.girth.value).toBeGreaterThan((before.levels.waist.girth.value ?? 0) + 8);
    expect(after.outliers).toEqual([]);
  });

  test("hardly moves it where the bare form is unknown: the gain has no ground", () => {
    const rereads = [waistRead(stackGirth(1, 14, 0), [one])];
    const { building } = calibrate(evidenceOf({ rereads, bareDeviations: deviations(500, 500) }));
    expect(Math.abs(building.layer / before.building.layer - 1)).toBeLessThan(0.01);
    expect(logDeviation(building)).toBeGreaterThan(0.98 * logDeviation(before.building));
  });

  test("a reading of the one batting leaves the other as it was", () => {
    const { building, finishing } = calibrate(evidenceOf({ rereads: [waistRead(stackGirth(2, 11, 0.2), [two])] }));
    expect(building.layer).toBeGreaterThan(before.building.layer);
    expect(finishing).toEqual(before.finishing);
    const other = calibrate(evidenceOf({ rereads: [waistRead(stackGirth(1, 5, 0), [thin])] }));
    expect(other.finishing.layer).toBeGreaterThan(before.finishing.layer);
    expect(other.building).toEqual(before.building);
  });
});

/**
 * Broken on purpose: the stack compression left out of the stack; the finishing layers as thick as the building ones.
 * Seen to fail.
 */
describe("doubled layers, and two battings at once", () => {
  test("a single and a fourfold wrap tell the layer and the stack compression apart", () => {
    for (const [layer, stackCompression] of [
      [5, 0],
      [8, 0.12],
      [11, 0.25],
    ] as const) {
      const rereads = [
        waistRead(stackGirth(1, layer, stackCompression), [one]),
        waistRead(stackGirth(4, layer, stackCompression), [four]),
      ];
      const { building } = calibrate(evidenceOf({ ...perfect, rereads }));
      expect(Math.abs(building.layer - layer)).toBeLessThan(0.08);
      expect(Math.abs(building.stackCompression - stackCompression)).toBeLessThan(0.015);
      expect(building.stackCompressionDeviation).toBeLessThan(0.02);
    }
  });

  test("a doubled wrap alone leaves open which of the two it is", () => {
    const { building } = calibrate(evidenceOf({ ...perfect, rereads: [waistRead(stackGirth(2, 8, 0.12), [two])] }));
    expect(building.stackCompressionDeviation).toBeGreaterThan(0.05);
    expect(building.standardDeviation).toBeGreaterThan(0.2);
    // What it does tell is the thickness of both together.
    const both = building.layer * (2 - building.stackCompression);
    expect(Math.abs(both - 8 * 1.88)).toBeLessThan(0.05);
  });

  test("a doubled wrap read as two is not a single one read as twice as thick", () => {
    const girth = stackGirth(2, 8, 0.1);
    const doubled = calibrate(evidenceOf({ ...perfect, rereads: [waistRead(girth, [two])] })).building.layer;
    const single = calibrate(evidenceOf({ ...perfect, rereads: [waistRead(girth, [one])] })).building.layer;
    expect(single / doubled).toBeGreaterThan(1.8);
  });

  test("each batting wrapped by itself is told by itself, and both in one stack then read as they lie", () => {
    const rereads = [waistRead(stackGirth(1, 9, 0), [one]), waistRead(stackGirth(1, 4, 0), [thin])];
    const after = calibrate(evidenceOf({ ...perfect, rereads, pinnedNow: [one, thin] }));
    expect(Math.abs(after.building.layer - 9)).toBeLessThan(0.06);
    expect(Math.abs(after.finishing.layer - 4)).toBeLessThan(0.06);
    // The two press on each other: at most both whole, at least both less what a stack is taken to lose.
    const gain = (after.levels.waist.girth.value ?? 0) - bareGirth;
    expect(gain).toBeLessThan(2 * Math.PI * 13);
    expect(gain).toBeGreaterThan(
      2 * Math.PI * 13 * (1 - Math.max(after.building.stackCompression, after.finishing.stackCompression)) - 1,
    );
  });
});

/** Broken on purpose: a share of a row's information taken away instead of added. Seen to fail. */
describe("a further reading", () => {
  let compared = 0;
  afterAll(() => expect(compared).toBeGreaterThan(60));

  const stacks: readonly (readonly LearnedPiece[])[] = [[], [one], [two], [four], [thin], [two, thin]];

  test("never makes anything less sure: the thickness of a layer, the stack compression, and what a level reads", () => {
    const readings = fc.array(fc.record({ stack: fc.nat(stacks.length - 1), arc: fc.boolean() }), {
      minLength: 1,
      maxLength: 4,
    });
    fc.assert(
      fc.property(readings, fc.nat(stacks.length - 1), (asked, now) => {
        let rereads = [waistRead(stackGirth(1, 8, 0), [one])];
        let before = calibrate(evidenceOf({ rereads, pinnedNow: stacks[now] ?? [] }));
        for (const { stack, arc } of asked) {
          const pinned = stacks[stack] ?? [];
          // It says just what is known already, so that only the certainty changes.
          const told = calibrate(evidenceOf({ rereads, pinnedNow: pinned })).levels.waist;
          const next = read(
            arc ? { waistFrontArc: told?.frontArc.value ?? 0 } : { waistGirth: told?.girth.value ?? 0 },
            pinned,
          );
          rereads = [...rereads, next];
          const after = calibrate(evidenceOf({ rereads, pinnedNow: stacks[now] ?? [] }));
          for (const role of ["building", "finishing"] as const) {
            expect(logDeviation(after[role])).toBeLessThanOrEqual(1.001 * logDeviation(before[role]));
            expect(after[role].stackCompressionDeviation).toBeLessThanOrEqual(
              1.001 * before[role].stackCompressionDeviation,
            );
          }
          for (const name of levelNames) {
            const { girth, frontArc, backArc } = after.levels[name];
            expect(girth.standardDeviation).toBeLessThanOrEqual(
              1.001 * before.levels[name].girth.standardDeviation + 0.001,
            );
            expect(frontArc.standardDeviation).toBeLessThanOrEqual(
              1.001 * before.levels[name].frontArc.standardDeviation + 0.001,
            );
            expect(backArc.standardDeviation).toBeLessThanOrEqual(
              1.001 * before.levels[name].backArc.standardDeviation + 0.001,
            );
          }
          before = after;
          compared++;
        }
      }),
      { seed: 11, numRuns: 40 },
    );
  });

  test("ten readings of one wrap leave no more doubt than the bare form's own", () => {
    const layer = 8;
    const rereads = Array.from({ length: 10 }, () => waistRead(stackGirth(1, layer, 0), [one]));
    const { building } = calibrate(evidenceOf({ rereads, bareDeviations: deviations(6, 6) }));
    // Ten tapes of 5 mm, and the one bare girth they all stand on: that doubt does not average out.
    expect(building.standardDeviation).toBeGreaterThan(0.95 * (6 / (2 * Math.PI)) * 0.9);
    expect(building.standardDeviation).toBeLessThan(Math.hypot(6, 5 / Math.sqrt(10)) / (2 * Math.PI));
  });
});

/**
 * Broken on purpose: the half width of the interval one standard deviation; a reading weighed by its error, not by the
 * square. Seen to fail.
 */
describe("the nine-in-ten interval", () => {
  test("holds the truth in 85 to 95 of a hundred trials, for battings drawn from what is known beforehand", () => {
    const luck = chance(5150);
    const trials = 300;
    const deviation = 0.4;
    let held = 0;
    for (let i = 0; i < trials; i++) {
      const layer = (7 / 0.9) * Math.exp(luck.normal(0, Math.log(1 + deviation)));
      const bare = bareGirth + luck.normal(0, 5);
      const girth = bare + 2 * Math.PI * layer + luck.normal(0, 5);
      const { building } = calibrate(
        evidenceOf({
          battings: { building: batting(7, deviation), finishing: batting(3, deviation) },
          rereads: [waistRead(girth, [one])],
        }),
      );
      if (building.least <= layer && layer <= building.most) held++;
    }
    expect(held / trials).toBeGreaterThan(0.85);
    expect(held / trials).toBeLessThan(0.95);
  });
});

/** Broken on purpose: no reading ever left out. Seen to fail. */
describe("a reading that cannot be", () => {
  test("is told, and moves nothing, until it is read again", () => {
    const before = calibrate(evidenceOf({}));
    const slipped = calibrate(evidenceOf({ rereads: [waistRead(bareGirth - 150, [two])] }));
    expect(slipped.outliers.map(({ name, read }) => ({ name, read }))).toEqual([
      { name: "waistGirth", read: bareGirth - 150 },
    ]);
    expect(slipped.building.layer).toBeCloseTo(before.building.layer, 9);
    expect(slipped.levels.waist.girth.value).toBeCloseTo(before.levels.waist.girth.value ?? 0, 9);
  });

  test("a batting of half or double the packet's thickness is no outlier", () => {
    for (const layer of [3.5, 14]) {
      expect(calibrate(evidenceOf({ rereads: [waistRead(stackGirth(4, layer, 0.1), [four])] })).outliers).toEqual([]);
    }
  });
});
