import type { SettledFitting, WorkEntry } from "../../document/fitting";
import type { ImpossibleReading } from "./replay";

/** Those that are still the last of their place: one that was measured again is no matter any more. */
export const standingImpossible = (
  impossible: readonly ImpossibleReading[],
  { work }: Pick<SettledFitting, "work">,
): readonly ImpossibleReading[] =>
  impossible.filter(
    (reading, i) =>
      work.findLastIndex((entry) => isOfPlace(entry, reading)) === reading.entry &&
      !impossible.some((other, j) => j > i && other.entry === reading.entry && other.name === reading.name),
  );

const isOfPlace = (entry: WorkEntry, { name }: ImpossibleReading): boolean =>
  entry.did === "measured" ? entry.readings[name] !== undefined : entry.did === "trial" && name === "waistGirth";
