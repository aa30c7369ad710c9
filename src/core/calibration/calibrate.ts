import { nineInTen } from "../tolerances";
import { type Gaussian, type LearningState, numberAt, priorState } from "../learning/learningState";
import type { LearnedPiece } from "../learning/layerCounts";
import type { QuarterValues } from "../learning/levelModel";
import {
  type Expected,
  expecter,
  type LearningEvidence,
  posterior,
  type Posterior,
  predictor,
} from "../learning/posterior";
import type { BattingRole } from "../material";
import { type ByLevel, levelNames, mapLevels } from "../body/vocabulary";
import { mm, ratio } from "../units";
import type { Calibration, PosteriorLength, PosteriorThickness, LevelPosterior } from "./calibration";
import { type Evidence, type Observation, observations } from "./evidence";
import { type ReadingsThatCount, withoutOutliers } from "./outliers";

/**
 * What the tape readings tell: how thick a layer of each batting is, and what the padded form reads now in every
 * quarter of every level, each with how sure that is. One Gaussian estimate holds all of it together
 * (`learning/posterior`); readings that cannot be are put aside first.
 */
export const calibrate = (evidence: Evidence): Calibration => learn(evidence).calibrate;

/** The same, with what the form would read over any pieces. */
export interface Learned {
  readonly calibrate: Calibration;
  readonly over: (pieces: readonly LearnedPiece[]) => ByLevel<LevelPosterior>;
}

export function learn(evidence: Evidence): Learned {
  const known = settled(evidence);
  const prior = priorState({ levels: known.levels.length, pieceIds: known.pieceIds }, known.battings, known.bare);
  const { rows, outliers } = countingReadings(evidence, known, prior);
  const learned = posterior({ ...known, readings: rows.map(readingOf) });
  const predict = predictor(learned, known.levels);
  const over = (pieces: readonly LearnedPiece[]) =>
    mapLevels((name) => levelPosterior(learned, predict, pieces, levelNames.indexOf(name)));
  return {
    calibrate: {
      outliers,
      building: thicknessOf(learned, "building"),
      finishing: thicknessOf(learned, "finishing"),
      levels: over(evidence.pinnedNow),
    },
    over,
  };
}

/** So many readings, the last ones, are weighed: a person takes fewer, and nobody waits for more. */
export const mostReadings = 400;

/** Of so many pieces, those on now and then the last that were read over, the cut and edges are learned. */
const mostPieces = 24;

function settled({
  levelSections,
  battings,
  bareDeviations,
  readingError,
  rereads,
  pinnedNow,
}: Evidence): LearningEvidence {
  const over = rereads.toReversed().flatMap(({ pinned }) => pinned);
  const pieceIds = [...new Set([...pinnedNow, ...over].map(({ id }) => id))].slice(0, mostPieces);
  return {
    levels: levelSections.map(({ depth, reshaped }) => ({ depthBelowNape: depth, outline: reshaped })),
    battings,
    bare: bareDeviations,
    readings: [],
    readingDeviation: readingError,
    pieceIds,
  };
}

const readingOf = ({ level, quarters, pinned, value }: Observation) => ({
  level,
  spans: [quarters.leftFront, quarters.rightFront, quarters.leftBack, quarters.rightBack] satisfies QuarterValues,
  pieces: pinned,
  value,
});

/**
 * Readings that can be, and those that cannot. A layer may turn out to be up to some two and a half times as thick as
 * its packet says; a reading that asks for more, or for less than nothing, is to be read again first.
 */
function countingReadings(
  evidence: Evidence,
  { levels, pieceIds }: LearningEvidence,
  prior: Gaussian,
): ReadingsThatCount {
  const layout: LearningState = { levels: levels.length, pieceIds };
  const expects = expecter(levels, layout, prior.mean);
  const rows = observations(evidence)
    .slice(-mostReadings)
    .map((row) => {
      const { value, slope }: Expected = expects(readingOf(row));
      return { row, expected: value, slope };
    });
  const thicknesses = [numberAt.thickness("building"), numberAt.thickness("finishing")];
  const covariance = prior.covariance.map((line, i) =>
    line.map((number, j) =>
      i === j && thicknesses.includes(i) ? Math.min(number, firstThicknessDeviation ** 2) : number,
    ),
  );
  return withoutOutliers(rows, covariance, evidence.readingError);
}

/**
 * The share by which a layer's thickness may differ from its packet's, one standard deviation, before the tape is read
 * twice.
 */
const firstThicknessDeviation = 0.35;

function thicknessOf({ state, covariance }: Posterior, role: BattingRole): PosteriorThickness {
  const layer = Math.exp(state[numberAt.thickness(role)] as number);
  const deviation = (at: number) => Math.sqrt(covariance[at]?.[at] ?? 0);
  const own = deviation(numberAt.thickness(role));
  return {
    layer: mm(layer),
    standardDeviation: mm(layer * own),
    least: mm(layer * Math.exp(-nineInTen * own)),
    most: mm(layer * Math.exp(nineInTen * own)),
    stackCompression: ratio(state[numberAt.loss(role)] as number),
    stackCompressionDeviation: ratio(deviation(numberAt.loss(role))),
  };
}

/** What a level reads with some pieces on, and how sure that is. */
function levelPosterior(
  { state }: Posterior,
  predict: ReturnType<typeof predictor>,
  pieces: readonly LearnedPiece[],
  level: number,
): LevelPosterior {
  const tell = (...spans: QuarterValues): PosteriorLength => {
    const { value, deviation } = predict({ level, spans, pieces });
    return { value: mm(value), standardDeviation: mm(deviation) };
  };
  const beyond = (quarter: number) => mm(state[numberAt.quarter(level, quarter)] as number);
  return {
    quarters: {
      leftFront: tell(1, 0, 0, 0),
      rightFront: tell(0, 1, 0, 0),
      leftBack: tell(0, 0, 1, 0),
      rightBack: tell(0, 0, 0, 1),
    },
    girth: tell(1, 1, 1, 1),
    frontArc: tell(1, 1, 0, 0),
    backArc: tell(0, 0, 1, 1),
    bare: { leftFront: beyond(0), rightFront: beyond(1), leftBack: beyond(2), rightBack: beyond(3) },
  };
}
