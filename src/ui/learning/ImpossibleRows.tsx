import type { ImpossibleReading } from "../../app/replay";
import type { SettledFitting, WorkEntry } from "../../document/fitting";
import { impossibleWords, learningWords } from "../text/learning";
import { measurementTexts } from "../text/measurements";
import { useDerived } from "../useDerived";
import { useDoAndSay } from "../useDone";
import { type LengthWords, useFitting, useLengths } from "../useStore";
import { RefusedRow } from "./RefusedRow";

/** Readings that this form with these pieces on cannot give: why, and what to do, until the place is read again. */
export function ImpossibleRows() {
  const fitting = useFitting();
  const { impossible } = useDerived();
  const { write } = useLengths();
  const doAndSay = useDoAndSay();
  return standingImpossible(impossible, fitting).map((reading) => (
    <RefusedRow
      key={reading.entry}
      sentence={impossibleSentence(reading, write)}
      todo={impossibleWords.todo}
      onIgnore={() => doAndSay({ does: "ignore", readings: ofPlace(reading, impossible) }, learningWords.leftOut)}
    />
  ));
}

/** Those of the same place go with it: the one before would only stand in its stead. */
const ofPlace = ({ name }: ImpossibleReading, impossible: readonly ImpossibleReading[]): readonly ImpossibleReading[] =>
  impossible.filter((other) => other.name === name);

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
