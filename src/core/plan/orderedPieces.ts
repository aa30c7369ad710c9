import type { QuarterReadings } from "../body/levelReadings";
import { type ByLevel, type LevelName, levelNames } from "../body/vocabulary";
import type { QuarterLengths } from "../geometry/outline";
import type { Pad } from "../padding/pad";
import { paddedTape } from "../padding/paddedTape";
import type { PieceCut } from "../padding/piece";
import { addPad, stackThickness, type Station } from "../padding/stack";
import { mm } from "../units";
import type { PlannedPiece, TapeReading, TapeReadings } from "./plan";
import type { Start } from "./start";

export interface OrderedPieces {
  readonly pieces: readonly PlannedPiece[];
  /** What the tape reads before the first of them. */
  readonly before: TapeReadings;
}

type Marked = (level: LevelName, reading: TapeReading) => TapeReading;

/** The pads as pieces, numbered in the order of pinning, each with what the tape reads at every level once it is on. */
export function orderedPieces(
  pads: readonly Pad[],
  cuts: readonly PieceCut[],
  stations: readonly Station[],
  start: Start,
  marked: Marked,
): OrderedPieces {
  const stacks = stations.map((station) => stackThickness(start.pinned, station));
  const read = (level: number): TapeReading =>
    wholeReading(
      paddedTape(stations[level] as Station, stacks[level] as Float64Array, start.firstLayer),
      start.offsets[level] as QuarterReadings,
    );
  const byLevel = (readings: readonly TapeReading[]): TapeReadings =>
    Object.fromEntries(
      levelNames.map((name, level) => [name, marked(name, readings[level] as TapeReading)]),
    ) as ByLevel<TapeReading>;
  const taken = new Set(start.takenIds);
  let readings = stations.map((_, level) => read(level));
  const before = byLevel(readings);
  const pieces = pads.map((pad, i): PlannedPiece => {
    readings = readings.map((reading, level) =>
      addPad(stacks[level] as Float64Array, pad, stations[level] as Station) ? read(level) : reading,
    );
    let number = 1;
    while (taken.has(`${pad.zone}-${number}`)) number++;
    const id = `${pad.zone}-${number}`;
    taken.add(id);
    return { ...pad, id, order: i + 1, cut: cuts[i] as PieceCut, readingsAfter: byLevel(readings) };
  });
  return { pieces, before };
}

const wholeReading = (read: QuarterLengths, offset: QuarterReadings): TapeReading => {
  const front = read.leftFront + read.rightFront + offset.leftFront + offset.rightFront;
  const back = read.leftBack + read.rightBack + offset.leftBack + offset.rightBack;
  return { girth: mm(front + back), frontArc: mm(front), backArc: mm(back) };
};
