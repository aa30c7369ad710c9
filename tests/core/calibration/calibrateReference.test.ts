import { describe, expect, test } from "vitest";
import { calibrate } from "../../../src/core/calibration/calibrate";
import { bareGirth, batting, evidenceOf, read, deviations, waistRead, waistRound } from "./roundForm";

/**
 * The estimator against references that share no line with it: the textbook's conjugate normal where the readings are
 * linear in the unknowns, and a posterior added up on a grid where they are not.
 */

/**
 * Normal prior, normal readings of known standard deviation: precisions add, and the mean is weighed by them (Gelman et
 * al., Bayesian Data Analysis, 3rd ed. 2013, section 2.5; from memory).
 */
function conjugate(
  prior: { readonly mean: number; readonly standardDeviation: number },
  readings: readonly number[],
  error: number,
) {
  const precision = 1 / prior.standardDeviation ** 2 + readings.length / error ** 2;
  const pull =
    prior.mean / prior.standardDeviation ** 2 + readings.reduce((sum, reading) => sum + reading / error ** 2, 0);
  return { mean: pull / precision, standardDeviation: Math.sqrt(1 / precision) };
}

/**
 * Broken on purpose: the covariance of the quarters doubled; a reading weighed by its error, not by the square. Seen to
 * fail.
 */
describe("a bare level, where readings are linear: the conjugate normal", () => {
  const seen = [bareGirth + 8, bareGirth + 2, bareGirth + 11];

  test("the girth after one, two and three readings has the textbook's mean and standard deviation", () => {
    for (const count of [0, 1, 2, 3]) {
      const readings = seen.slice(0, count);
      const rereads = readings.map((girth) => waistRead(girth, []));
      const told = calibrate(evidenceOf({ rereads, bareDeviations: deviations(6, 9), readingError: 4 })).levels.waist;
      const textbook = conjugate({ mean: bareGirth, standardDeviation: 6 }, readings, 4);
      expect(told?.girth.value).toBeCloseTo(textbook.mean, 1);
      expect(told?.girth.standardDeviation).toBeCloseTo(textbook.standardDeviation, 6);
    }
  });

  test("the front arc alone: its standard deviation before is half of the girth's and half of the halves' difference together", () => {
    const front = [bareGirth / 2 - 7, bareGirth / 2 - 1];
    const rereads = front.map((waistFrontArc) => read({ waistFrontArc }, []));
    const told = calibrate(evidenceOf({ rereads, bareDeviations: deviations(6, 9), readingError: 4 })).levels.waist;
    const textbook = conjugate({ mean: bareGirth / 2, standardDeviation: Math.hypot(6, 9) / 2 }, front, 4);
    expect(told?.frontArc.value).toBeCloseTo(textbook.mean, 1);
    expect(told?.frontArc.standardDeviation).toBeCloseTo(textbook.standardDeviation, 6);
  });

  test("a batting that is nearly known moves in a straight line, and so does its standard deviation", () => {
    const [layer, share, error] = [8, 0.01, 1];
    const known = {
      battings: { building: batting(0.9 * layer, share), finishing: batting(3, share) },
      bareDeviations: deviations(0.001, 0.001),
    };
    const gain = 2 * Math.PI * (layer + 0.2);
    const { building } = calibrate(
      evidenceOf({ ...known, readingError: error, rereads: [waistRead(bareGirth + gain, [waistRound(1)])] }),
    );
    const textbook = conjugate(
      { mean: layer, standardDeviation: layer * Math.log(1 + share) },
      [gain / (2 * Math.PI)],
      error / (2 * Math.PI),
    );
    expect(Math.abs(building.layer - textbook.mean)).toBeLessThan(0.01);
    expect(building.standardDeviation / textbook.standardDeviation).toBeCloseTo(1, 1);
  });
});

interface Posterior {
  readonly layer: number;
  readonly logDeviation: number;
  readonly stackCompression: number;
  readonly stackCompressionDeviation: number;
}

interface Case {
  readonly packet: number;
  readonly standardDeviation: number;
  readonly error: number;
  readonly bare: number;
  readonly readings: readonly { readonly layers: number; readonly girth: number }[];
}

/**
 * The posterior over (logarithm of the layer, stack compression) added up on a grid. The girths are Steiner's, the bare
 * girth's own error is common to all readings and integrated out by hand: their covariance is e^2 I + b^2 J, whose
 * inverse is (I - J b^2 / (e^2 + n b^2)) / e^2.
 */
function gridPosterior({ packet, standardDeviation, error, bare, readings }: Case): Posterior {
  const sums = { weight: 0, log: 0, log2: 0, stackCompression: 0, squeeze2: 0 };
  const [middle, width] = [Math.log(packet / 0.9), Math.log(1 + standardDeviation)];
  const steps = 240;
  for (let i = 0; i <= steps; i++) {
    const log = middle + 4 * width * ((2 * i) / steps - 1);
    for (let j = 0; j <= steps; j++) {
      const stackCompression = (0.4 * j) / steps;
      const misses = readings.map(
        ({ layers, girth }) =>
          girth - bareGirth - 2 * Math.PI * Math.exp(log) * (1 + (layers - 1) * (1 - stackCompression)),
      );
      const total = misses.reduce((sum, miss) => sum + miss, 0);
      const squares = misses.reduce((sum, miss) => sum + miss * miss, 0);
      const fit = (squares - (total * total * bare ** 2) / (error ** 2 + misses.length * bare ** 2)) / error ** 2;
      const weight = Math.exp(-(fit + ((log - middle) / width) ** 2 + ((stackCompression - 0.1) / 0.08) ** 2) / 2);
      sums.weight += weight;
      sums.log += weight * log;
      sums.log2 += weight * log * log;
      sums.stackCompression += weight * stackCompression;
      sums.squeeze2 += weight * stackCompression * stackCompression;
    }
  }
  const [log, stackCompression] = [sums.log / sums.weight, sums.stackCompression / sums.weight];
  return {
    layer: Math.exp(log),
    logDeviation: Math.sqrt(sums.log2 / sums.weight - log * log),
    stackCompression,
    stackCompressionDeviation: Math.sqrt(sums.squeeze2 / sums.weight - stackCompression * stackCompression),
  };
}

/**
 * Broken on purpose: one round of iteration from the packet; the stack compression's prior standard deviation doubled.
 * Seen to fail.
 */
describe("layer and stack compression together: a posterior added up on a grid", () => {
  const girth = (layers: number, layer: number, stackCompression: number) =>
    bareGirth + 2 * Math.PI * layer * (1 + (layers - 1) * (1 - stackCompression));
  const cases: readonly (readonly [string, Case])[] = [
    [
      "one layer, half as thick again as its packet",
      { packet: 7, standardDeviation: 0.4, error: 5, bare: 5, readings: [{ layers: 1, girth: girth(1, 10.5, 0) }] },
    ],
    [
      "one layer, little more than half its packet",
      { packet: 7, standardDeviation: 0.4, error: 5, bare: 5, readings: [{ layers: 1, girth: girth(1, 4.5, 0) + 3 }] },
    ],
    [
      "one, then three, then six layers that give",
      {
        packet: 7,
        standardDeviation: 0.4,
        error: 5,
        bare: 5,
        readings: [
          { layers: 1, girth: girth(1, 9, 0.15) - 4 },
          { layers: 3, girth: girth(3, 9, 0.15) + 5 },
          { layers: 6, girth: girth(6, 9, 0.15) - 2 },
        ],
      },
    ],
    [
      "a careful tape and a doubled wrap",
      {
        packet: 5,
        standardDeviation: 0.5,
        error: 2,
        bare: 2,
        readings: [
          { layers: 1, girth: girth(1, 8, 0.2) + 1 },
          { layers: 2, girth: girth(2, 8, 0.2) },
        ],
      },
    ],
  ];

  test.each(cases)(
    "%s: the means within a third of a standard deviation, the standard deviations within a fifth",
    (_, one) => {
      const { packet, standardDeviation, error, bare, readings } = one;
      const told = calibrate(
        evidenceOf({
          battings: { building: batting(packet, standardDeviation), finishing: batting(3, 0.4) },
          readingError: error,
          bareDeviations: deviations(bare, 7),
          rereads: readings.map(({ layers, girth: seen }) => waistRead(seen, [waistRound(layers)])),
        }),
      ).building;
      const grid = gridPosterior(one);
      expect(Math.abs(Math.log(told.layer / grid.layer))).toBeLessThan(grid.logDeviation / 3);
      expect(told.standardDeviation / told.layer / grid.logDeviation).toBeGreaterThan(0.8);
      expect(told.standardDeviation / told.layer / grid.logDeviation).toBeLessThan(1.2);
      expect(Math.abs(told.stackCompression - grid.stackCompression)).toBeLessThan(grid.stackCompressionDeviation / 3);
      // The grid's stack compression cannot be negative; a normal one can, and so may be a little wider.
      expect(told.stackCompressionDeviation / grid.stackCompressionDeviation).toBeGreaterThan(0.8);
      expect(told.stackCompressionDeviation / grid.stackCompressionDeviation).toBeLessThan(1.3);
    },
  );
});
