import type { Batting, BattingRole } from "../material";
import { symmetric } from "../numerics/symmetric";
import { type Bounds, held, stateBounds } from "./bounds";
import type { LearnedPiece } from "./layerCounts";
import { type BareDeviation, type Gaussian, type LearningState, priorState } from "./learningState";
import { type LearningLevel, levelTold, type QuarterValues, type Told } from "./levelModel";

/** One reading of the tape over the form as it was then. */
export interface TapeEvidence {
  /** Which of the levels, and which quarters it spans: left front, right front, left back, right back. */
  readonly level: number;
  readonly spans: QuarterValues;
  readonly pieces: readonly LearnedPiece[];
  readonly value: number;
}

/** Everything that is known before and from the readings, which have been held against what can be. */
export interface LearningEvidence {
  readonly levels: readonly LearningLevel[];
  readonly battings: { readonly [role in BattingRole]: Batting };
  readonly bare: readonly BareDeviation[];
  readonly readings: readonly TapeEvidence[];
  /** One standard deviation of a single reading (mm). */
  readonly readingDeviation: number;
  /** The pieces whose own cut and edge are learned. */
  readonly pieceIds: readonly string[];
}

/** What is known after the readings: the most probable state, and how sure it is. */
export interface Posterior {
  readonly layout: LearningState;
  readonly state: readonly number[];
  readonly covariance: Gaussian["covariance"];
}

/** A reading as a state tells it, and how it moves with the state's numbers. */
export interface Expected {
  readonly value: number;
  readonly slope: readonly number[];
}

/** The readings are nearly linear in the state: the fourth round no longer moves it by a tenth of a deviation. */
const gaussNewtonRounds = 4;

/**
 * The most probable state after the readings, by Gauss-Newton with the curvature there for how sure it is (Gelman et
 * al., Bayesian Data Analysis, 3rd ed. 2013, sections 4.1 and 13.3, cited from memory). Without readings it is the
 * prior.
 */
export function posterior(evidence: LearningEvidence): Posterior {
  const layout: LearningState = { levels: evidence.levels.length, pieceIds: evidence.pieceIds };
  const prior = priorState(layout, evidence.battings, evidence.bare);
  const bounds = stateBounds(
    layout,
    evidence.battings,
    evidence.bare,
    evidence.levels.map((level) => level.outline(0, 0).quarters),
  );
  if (evidence.readings.length === 0) return { layout, state: prior.mean, covariance: prior.covariance };
  const precision = symmetric(prior.covariance).inverse();
  let known: Posterior = { layout, state: prior.mean, covariance: prior.covariance };
  for (let round = 0; round < gaussNewtonRounds; round++)
    known = improved(evidence, known, prior.mean, precision, bounds);
  return known;
}

function improved(
  { levels, readings, readingDeviation }: LearningEvidence,
  { layout, state }: Posterior,
  mean: readonly number[],
  precision: Gaussian["covariance"],
  bounds: Bounds,
): Posterior {
  const expects = expecter(levels, layout, state);
  const information = precision.map((line) => [...line]);
  const pull = precision.map((line) => dot(line, mean));
  const weight = readingDeviation ** -2;
  for (const reading of readings) {
    const { value, slope } = expects(reading);
    const target = reading.value - value + dot(slope, state);
    const moving = [...slope.keys()].filter((i) => slope[i] !== 0);
    for (const i of moving) {
      const s = slope[i] as number;
      pull[i] = (pull[i] as number) + weight * s * target;
      const line = information[i] as number[];
      for (const j of moving) line[j] = (line[j] as number) + weight * s * (slope[j] as number);
    }
  }
  const solved = symmetric(information);
  return { layout, state: held(solved.solve(pull), bounds), covariance: solved.inverse() };
}

/** Readings of one level over the same pieces share their simulation. */
export function expecter(
  levels: readonly LearningLevel[],
  layout: LearningState,
  state: readonly number[],
): (reading: Omit<TapeEvidence, "value">) => Expected {
  const known = levels.map(() => new Map<readonly LearnedPiece[], Told>());
  return ({ level, spans, pieces }) => {
    const byPieces = known[level] as Map<readonly LearnedPiece[], Told>;
    const told = byPieces.get(pieces) ?? levelTold(levels[level] as LearningLevel, level, pieces, layout, state);
    byPieces.set(pieces, told);
    const slope = new Array<number>(state.length).fill(0);
    for (const [number, quarters] of told.slopes) slope[number] = dot(spans, quarters);
    return { value: dot(spans, told.quarters), slope };
  };
}

/** What the tape is expected to read, and one standard deviation of that, without the error of the reading itself (mm). */
export function predictor(
  { layout, state, covariance }: Posterior,
  levels: readonly LearningLevel[],
): (reading: Omit<TapeEvidence, "value">) => { readonly value: number; readonly deviation: number } {
  const expects = expecter(levels, layout, state);
  return (reading) => {
    const { value, slope } = expects(reading);
    const variance = slope.reduce((sum, s, i) => (s === 0 ? sum : sum + s * dot(covariance[i] ?? [], slope)), 0);
    return { value, deviation: Math.sqrt(Math.max(0, variance)) };
  };
}

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, number, i) => sum + number * (other[i] as number), 0);
