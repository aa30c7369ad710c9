import type { Batting, BattingRole } from "../material";
import type { QuarterLengths } from "../geometry/outline";
import {
  type BareDeviation,
  type LearningState,
  numberAt,
  quarterCovariance,
  stackLoss,
  stateSize,
} from "./learningState";

/** The range that each number of a state can have at all. */
export interface Bounds {
  readonly least: readonly number[];
  readonly most: readonly number[];
}

/**
 * What numbers of a form, of a hand and of a seam can be at all, from nothing: far beyond what any was seen to be. A
 * judgement.
 */
const farthest = { exponent: 1.4, breadth: 0.2, seamTurn: 0.6, cut: 20, edge: 2 } as const;

export function stateBounds(
  layout: LearningState,
  battings: { readonly [role in BattingRole]: Batting },
  bare: readonly BareDeviation[],
  quarters: readonly QuarterLengths[],
): Bounds {
  const least = new Array<number>(stateSize(layout)).fill(0);
  const most = new Array<number>(stateSize(layout)).fill(0);
  const set = (at: number, from: number, to: number) => {
    least[at] = from;
    most[at] = to;
  };
  for (const role of ["building", "finishing"] as const) {
    set(numberAt.thickness(role), Math.log(thinnestLayer(battings[role])), Math.log(thickestLayer(battings[role])));
    set(numberAt.loss(role), 0, stackLoss.most);
  }
  for (const [level, deviation] of bare.entries()) {
    set(numberAt.exponent(level), -farthest.exponent, farthest.exponent);
    set(numberAt.breadth(level), -farthest.breadth, farthest.breadth);
    set(numberAt.seamTurn(level), -farthest.seamTurn, farthest.seamTurn);
    for (const [quarter, name] of (["leftFront", "rightFront", "leftBack", "rightBack"] as const).entries()) {
      const room = bareRoom(quarters[level]?.[name] ?? 0, quarterCovariance(quarter, quarter, deviation));
      set(numberAt.quarter(level, quarter), -room, room);
    }
  }
  for (const piece of layout.pieceIds.keys()) {
    set(numberAt.cut(layout, piece), -farthest.cut, farthest.cut);
    set(numberAt.edge(layout, piece), -farthest.edge, farthest.edge);
  }
  return { least, most };
}

/**
 * A state no number of which is beyond what it can be. Readings that contradict each other would otherwise drive an
 * iteration of a curved problem to where nothing is finite any more.
 */
export const held = (state: readonly number[], { least, most }: Bounds): readonly number[] =>
  state.map((number, i) => Math.max(least[i] as number, Math.min(most[i] as number, number)));

/**
 * The most one layer alone can add under a snug tape (mm): three and a half times what it was put down as, and no more
 * than an inch and a quarter, since no batting sold is loftier; more only for one put down as thicker itself. A
 * judgement: published lofts of one weight differ more than twofold, and a person may take one batting for another.
 */
export const thickestLayer = ({ layerThickness }: Pick<Batting, "layerThickness">): number =>
  Math.min(layersOff * layerThickness, Math.max(loftiest, packetOff * layerThickness));

/** The least one layer alone can add (mm): as many times less than it was put down as. */
const thinnestLayer = ({ layerThickness }: Pick<Batting, "layerThickness">): number => layerThickness / layersOff;

const layersOff = 3.5;
const loftiest = 32;
const packetOff = 1.25;

/**
 * How far the bare form may truly read from what was measured of a quarter or of several together (mm): four standard
 * deviations and a twentieth of the reading, as forms from a size table and seams that were sewn elsewhere do. A
 * judgement.
 */
export const bareRoom = (reading: number, variance: number): number =>
  Math.min(mostRoom * reading, deviationsOff * Math.sqrt(Math.max(0, variance)) + shareOff * reading);

const deviationsOff = 4;
const shareOff = 0.05;
const mostRoom = 0.4;
