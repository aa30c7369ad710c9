import type { Batting, BattingRole } from "../material";

/**
 * What is unknown of a padded form, as one list of numbers: of each batting the logarithm of one layer's compressed thickness and
 * the share that every further layer of a stack loses; at each level how far the form's exponent and the logarithm of its
 * breadth are from what is taken first, how far its front half turns through more than half a turn (radians), and what
 * each quarter of the bare form reads beyond what was measured of it (mm); of each piece how far each side edge was cut
 * beyond the drawing (mm) and the logarithm of how much longer its feather came out.
 */
export interface LearningState {
  readonly levels: number;
  readonly pieceIds: readonly string[];
}

const battingNumbers = 4;
const levelNumbers = 7;
const pieceNumbers = 2;

const roles: readonly BattingRole[] = ["building", "finishing"];

export const stateSize = ({ levels, pieceIds }: LearningState): number =>
  battingNumbers + levelNumbers * levels + pieceNumbers * pieceIds.length;

const levelStart = (level: number): number => battingNumbers + levelNumbers * level;
const pieceStart = ({ levels }: LearningState, piece: number): number =>
  battingNumbers + levelNumbers * levels + pieceNumbers * piece;

/** Where each number stands in the list. */
export const numberAt = {
  thickness: (role: BattingRole): number => 2 * roles.indexOf(role),
  loss: (role: BattingRole): number => 2 * roles.indexOf(role) + 1,
  exponent: levelStart,
  breadth: (level: number): number => levelStart(level) + 1,
  seamTurn: (level: number): number => levelStart(level) + 2,
  quarter: (level: number, quarter: number): number => levelStart(level) + 3 + quarter,
  cut: pieceStart,
  edge: (state: LearningState, piece: number): number => pieceStart(state, piece) + 1,
} as const;

export interface Gaussian {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

/** How unsure the bare form is at one level, each one standard deviation: its readings (mm), exponent, and logarithm of breadth. */
export interface BareDeviation {
  readonly girth: number;
  readonly frontLessBack: number;
  readonly leftLessRight: number;
  readonly exponent: number;
  readonly breadth: number;
}

/** Stacks were seen to lose up to a quarter: a tenth, give or take nearly as much. No published figure; a judgement. */
export const stackLoss = { mean: 0.1, deviation: 0.08, most: 0.4 } as const;

/** The front half of a real torso turns through 180 degrees less 15 to more 12 (radians, one standard deviation). */
const seamTurnDeviation = 0.1;

/** How far each side edge of a piece comes out beyond its drawing (mm), and the logarithm of its feather. Judgements. */
const cutDeviation = 3;
const edgeDeviation = 0.45;

export function priorState(
  state: LearningState,
  battings: { readonly [role in BattingRole]: Batting },
  bare: readonly BareDeviation[],
): Gaussian {
  const size = stateSize(state);
  const mean = new Array<number>(size).fill(0);
  const covariance = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const setDeviation = (at: number, deviation: number) => {
    (covariance[at] as number[])[at] = deviation ** 2;
  };
  for (const role of roles) {
    const { layerThickness, relativeDeviation } = battings[role];
    // The packet speaks of a layer in a stack; alone it is as much thicker as a stack would press it.
    mean[numberAt.thickness(role)] = Math.log(layerThickness / (1 - stackLoss.mean));
    mean[numberAt.loss(role)] = stackLoss.mean;
    setDeviation(numberAt.thickness(role), Math.log(1 + relativeDeviation));
    setDeviation(numberAt.loss(role), stackLoss.deviation);
  }
  for (const [level, deviation] of bare.entries()) {
    setDeviation(numberAt.exponent(level), deviation.exponent);
    setDeviation(numberAt.breadth(level), deviation.breadth);
    setDeviation(numberAt.seamTurn(level), seamTurnDeviation);
    for (const a of [0, 1, 2, 3]) {
      for (const b of [0, 1, 2, 3]) {
        (covariance[numberAt.quarter(level, a)] as number[])[numberAt.quarter(level, b)] = quarterCovariance(
          a,
          b,
          deviation,
        );
      }
    }
  }
  for (const piece of state.pieceIds.keys()) {
    setDeviation(numberAt.cut(state, piece), cutDeviation);
    setDeviation(numberAt.edge(state, piece), edgeDeviation);
  }
  return { mean, covariance };
}

/**
 * How the errors of two quarters of a bare level go together, from the deviations of its girth, of front less back, and of left
 * less right: the sum and differences are independent, each quarter holds a quarter of each.
 */
export function quarterCovariance(
  a: number,
  b: number,
  { girth, frontLessBack, leftLessRight }: Pick<BareDeviation, "girth" | "frontLessBack" | "leftLessRight">,
): number {
  const sameHalf = a >> 1 === b >> 1 ? 1 : -1;
  const sameSide = (a & 1) === (b & 1) ? 1 : -1;
  return (girth ** 2 + sameHalf * frontLessBack ** 2 + (sameSide + sameHalf * sameSide) * leftLessRight ** 2) / 16;
}
