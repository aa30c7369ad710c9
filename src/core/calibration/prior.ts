import type { Batting } from "../material";
import { type Evidence, quarterNames } from "./evidence";

/**
 * What is known before any tape is read over padding: a Gaussian, and the range that each of its numbers can have at all.
 * State: ln layer and squeeze of the building batting, the same of the finishing batting, then for the quarters of each
 * level what the bare form truly reads beyond what was measured of it (mm).
 */
export interface Prior {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly least: readonly number[];
  readonly most: readonly number[];
}

export const worthCount = 4;

/** Stacks were seen to lose up to a quarter: a squeeze of a tenth, give or take as much. No published figure; a judgement. */
const squeezePrior = { mean: 0.1, spread: 0.09, most: 0.4 } as const;

export function priorState({ battings, stations, bareSpreads }: Evidence): Prior {
  const size = worthCount + 4 * stations.length;
  const mean = new Array<number>(size).fill(0);
  const covariance = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const [least, most] = [new Array<number>(size).fill(0), new Array<number>(size).fill(squeezePrior.most)];
  for (const [i, role] of (["building", "finishing"] as const).entries()) {
    const { layerThickness, spread } = battings[role];
    // The packet speaks of a layer in a stack; alone it is worth what the stack would squeeze out of it more.
    mean[2 * i] = Math.log(layerThickness / (1 - squeezePrior.mean));
    mean[2 * i + 1] = squeezePrior.mean;
    (covariance[2 * i] as number[])[2 * i] = Math.log(1 + spread) ** 2;
    (covariance[2 * i + 1] as number[])[2 * i + 1] = squeezePrior.spread ** 2;
    least[2 * i] = Math.log(thinnestLayer(battings[role]));
    most[2 * i] = Math.log(thickestLayer(battings[role]));
  }
  for (const [level, spread] of bareSpreads.entries()) {
    for (const [a, quarter] of quarterNames.entries()) {
      const at = worthCount + 4 * level + a;
      const room = bareRoom(stations[level]?.outline.quarters[quarter] ?? 0, quarterCovariance(a, a, spread));
      [least[at], most[at]] = [-room, room];
      for (const b of [0, 1, 2, 3])
        (covariance[at] as number[])[worthCount + 4 * level + b] = quarterCovariance(a, b, spread);
    }
  }
  return { mean, covariance, least, most };
}

/**
 * A state no number of which is beyond what it can be. Readings that contradict each other would otherwise drive an
 * iteration of a curved problem to where nothing is finite any more.
 */
export const held = (state: readonly number[], { least, most }: Prior): readonly number[] =>
  state.map((number, i) => Math.max(least[i] as number, Math.min(most[i] as number, number)));

/**
 * The most one layer alone can add under a snug tape (mm): three and a half times what it was put down as, and no more than an inch and
 * a quarter, since no batting sold is loftier; more only for one put down as thicker itself. A judgement: published lofts
 * of one weight differ more than twofold, and a person may take one batting for another.
 */
export const thickestLayer = ({ layerThickness }: Pick<Batting, "layerThickness">): number =>
  Math.min(layersOff * layerThickness, Math.max(loftiest, packetOff * layerThickness));

/** The least one layer alone can add (mm): as many times less than it was put down as. */
export const thinnestLayer = ({ layerThickness }: Pick<Batting, "layerThickness">): number =>
  layerThickness / layersOff;

const layersOff = 3.5;
const loftiest = 32;
const packetOff = 1.25;

/**
 * How far the bare form may truly read from what was measured of a quarter or of several together (mm): four spreads and a
 * twentieth of the reading, as forms from a size table and seams that were sewn elsewhere do. A judgement.
 */
export const bareRoom = (reading: number, variance: number): number =>
  Math.min(mostRoom * reading, spreadsOff * Math.sqrt(Math.max(0, variance)) + shareOff * reading);

const spreadsOff = 4;
const shareOff = 0.05;
const mostRoom = 0.4;

/**
 * How the errors of two quarters of a bare level go together, from the spreads of its girth, of front less back, and of left
 * less right: the sum and differences are independent, each quarter holds a quarter of each.
 */
export function quarterCovariance(a: number, b: number, spread: Evidence["bareSpreads"][number]): number {
  const sameHalf = a >> 1 === b >> 1 ? 1 : -1;
  const sameSide = (a & 1) === (b & 1) ? 1 : -1;
  return (
    (spread.girth ** 2 +
      sameHalf * spread.frontLessBack ** 2 +
      (sameSide + sameHalf * sameSide) * spread.leftLessRight ** 2) /
    16
  );
}
