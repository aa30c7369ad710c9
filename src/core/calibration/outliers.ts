import type { Layer } from "../padding/layer";
import type { Laid } from "../padding/layerThickness";
import { mm } from "../units";
import type { Outlier } from "./calibration";
import type { Observation } from "./evidence";

/** The readings that count, and those that are to be read again first. */
export interface ReadingsThatCount {
  readonly rows: readonly Observation[];
  readonly outliers: readonly Outlier[];
}

/** A reading, what was expected of it before anything was read (mm), and how it moves with each number of the state. */
export interface ExpectedReading {
  readonly row: Observation;
  readonly expected: number;
  readonly slope: readonly number[];
}

type Covariance = readonly (readonly number[])[];

/** What is expected after some readings: how far the state has moved from where it began, and how sure that is. */
interface Expected {
  readonly moved: readonly number[];
  readonly covariance: Covariance;
}

/** A reading further off than this many standard deviations (once in some two thousand honest ones) has to be read again. */
const outlierDeviations = 3.5;

/** Two readings of one place over the same pieces agree within as many standard deviations of their difference. */
const agreeingDeviations = 3;

/**
 * Tells readings that can be from those that cannot, in the order they were taken: each is held against what the ones before it
 * lead to expect, with how unsure that is. A second reading of the same place over the same pieces that agrees makes both
 * count, however far off; one that does not takes the place of the first, but not of two that agree. For this the
 * readings are taken as linear in the state, which they nearly are, and corrected one after the other (Kalman's update:
 * Gelb, Applied Optimal Estimation, 1974, section 4.2, cited from memory). The covariance is that of the state before
 * anything was read; the reading error is one standard deviation (mm).
 */
export function withoutOutliers(
  rows: readonly ExpectedReading[],
  covariance: Covariance,
  readingError: number,
): ReadingsThatCount {
  const start: Expected = { moved: covariance.map(() => 0), covariance };
  const after = (known: readonly ExpectedReading[]) =>
    known.reduce((expected, item) => corrected(expected, item, readingError), start);
  const agrees = (one: ExpectedReading) => (other: ExpectedReading) =>
    other !== one && isSamePlace(one, other) && agree(one, other, readingError);
  const outliers: Outlier[] = [];
  let kept: readonly ExpectedReading[] = [];
  let replaced: readonly ExpectedReading[] = [];
  let expected = start;
  for (const item of rows) {
    const isConfirmed = rows.some(agrees(item));
    const contrary = kept.filter((other) => isSamePlace(item, other) && !agree(item, other, readingError));
    const theyStand = !isConfirmed && contrary.some((one) => contrary.some(agrees(one)));
    const giveWay = theyStand ? [] : contrary;
    const others = kept.filter((other) => !giveWay.includes(other));
    const before = giveWay.length === 0 ? expected : after(others);
    const { off, standardDeviation } = against(before, item, readingError);
    if (theyStand || (Math.abs(off) > outlierDeviations * standardDeviation && !isConfirmed)) {
      outliers.push({ name: item.row.name, read: mm(item.row.value), expected: mm(item.row.value - off) });
      continue;
    }
    const takenBack = replaced.filter(agrees(item));
    replaced = [...replaced.filter((one) => !takenBack.includes(one)), ...giveWay];
    kept = [...others, ...takenBack, item];
    expected = takenBack.length === 0 ? corrected(before, item, readingError) : after(kept);
  }
  return { rows: kept.map(({ row }) => row), outliers };
}

const agree = (one: ExpectedReading, other: ExpectedReading, readingError: number): boolean =>
  Math.abs(one.row.value - other.row.value) <= agreeingDeviations * Math.SQRT2 * readingError;

/** The same stretch of tape, over the same pieces. */
const isSamePlace = ({ row: one }: ExpectedReading, { row: other }: ExpectedReading): boolean =>
  one.name === other.name &&
  one.pinned.length === other.pinned.length &&
  one.pinned.every((piece, i) => isSamePiece(piece, other.pinned[i] as Laid));

const isSamePiece = (one: Laid, other: Laid): boolean =>
  one.anchor === other.anchor &&
  one.layers.length === other.layers.length &&
  one.layers.every((layer, i) => isSameLayer(layer, other.layers[i] as Layer));

const isSameLayer = (one: Layer, other: Layer): boolean =>
  one.batting === other.batting &&
  (one.rows === other.rows ||
    (one.rows.length === other.rows.length &&
      one.rows.every(({ depthBelowNape, start, end }, i) => {
        const row = other.rows[i];
        return depthBelowNape === row?.depthBelowNape && start === row.start && end === row.end;
      })));

/** How far a reading is from what is expected of it, and how far it may be. */
function against({ moved, covariance }: Expected, { row, expected, slope }: ExpectedReading, readingError: number) {
  const pull = slope.map((_, i) => dot(covariance[i] as readonly number[], slope));
  return {
    off: row.value - expected - dot(slope, moved),
    standardDeviation: Math.sqrt(dot(slope, pull) + readingError ** 2),
    pull,
  };
}

function corrected(expected: Expected, item: ExpectedReading, readingError: number): Expected {
  const { off, standardDeviation, pull } = against(expected, item, readingError);
  const share = standardDeviation ** -2;
  return {
    moved: expected.moved.map((number, i) => number + (pull[i] as number) * share * off),
    covariance: expected.covariance.map((line, i) =>
      line.map((number, j) => number - (pull[i] as number) * (pull[j] as number) * share),
    ),
  };
}

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, number, i) => sum + number * (other[i] as number), 0);
