import type { ImpossibleReading } from "../../../app/progress/replay";
import type { SettledFitting, WorkEntry } from "../../../document/fitting";
import { impossibleWords } from "../../../text/learning";
import { measurementTexts } from "../../../text/measurements";
import type { LengthWords } from "../../kit/useStore";

/** A reading that this form with these pieces on cannot give: why, in a sentence. */
export const impossibleSentence = (
  { name, read, least, most }: ImpossibleReading,
  write: LengthWords["write"],
): string => impossibleWords.why(measurementTexts[name].label, write(read), write(least), write(most));

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
