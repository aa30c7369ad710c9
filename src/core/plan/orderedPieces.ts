import { type ByLevel, type LevelName, levelNames } from "../body/vocabulary";
import type { QuarterLengths } from "../geometry/outline";
import type { Pad } from "../padding/pad";
import type { PieceCut } from "../padding/piece";
import { addPad, type Station } from "../padding/stack";
import { tapeQuarters } from "../tape/tape";
import { mm } from "../units";
import type { PlannedPiece, TapeReading } from "./plan";

/** The pads as pieces, numbered in the order of pinning, each with what the tape reads at every level once it is on. */
export function orderedPieces(
  pads: readonly Pad[],
  cuts: readonly PieceCut[],
  stations: readonly Station[],
  marked: (level: LevelName, reading: TapeReading) => TapeReading,
): readonly PlannedPiece[] {
  const stacks = stations.map((station) => new Float64Array(station.outline.count));
  let readings = stations.map((station, i) => wholeReading(tapeQuarters(station.outline, stacks[i] as Float64Array)));
  const counts = new Map<string, number>();
  return pads.map((pad, i) => {
    readings = readings.map((before, level) => {
      const station = stations[level] as Station;
      const stack = stacks[level] as Float64Array;
      return addPad(stack, pad, station) ? wholeReading(tapeQuarters(station.outline, stack)) : before;
    });
    const number = (counts.get(pad.zone) ?? 0) + 1;
    counts.set(pad.zone, number);
    const after = Object.fromEntries(levelNames.map((name, level) => [name, marked(name, readings[level] as TapeReading)]));
    return {
      ...pad,
      id: `${pad.zone}-${number}`,
      order: i + 1,
      cut: cuts[i] as PieceCut,
      readingsAfter: after as ByLevel<TapeReading>,
    };
  });
}

const wholeReading = ({ leftFront, rightFront, leftBack, rightBack }: QuarterLengths): TapeReading => ({
  girth: mm(leftFront + rightFront + leftBack + rightBack),
  frontArc: mm(leftFront + rightFront),
  backArc: mm(leftBack + rightBack),
});
