import type { ImpossibleReading } from "../../app/replay";
import { isLeftOutable } from "../../app/commands";
import type { SettledFitting, WorkEntry } from "../../document/fitting";
import { impossibleWords, learningWords } from "../text/learning";
import { measurementTexts } from "../text/measurements";
import { useDerived } from "../useDerived";
import { useDoAndSay } from "../useDone";
import { type LengthWords, useFitting, useLengths } from "../useStore";

/** Readings that this form with these pieces on cannot give: why, and what to do, until the place is read again. */
export function ImpossibleRows() {
  const fitting = useFitting();
  const { impossible } = useDerived();
  const { write } = useLengths();
  const doAndSay = useDoAndSay();
  const ignore = ([entry, ...more]: readonly number[]) => {
    if (entry !== undefined) doAndSay({ does: "leaveOut", entry, more }, learningWords.leftOut);
  };
  return standingImpossible(impossible, fitting).map((reading) => {
    const entries = ignorable(reading, impossible, fitting);
    return (
      <div key={reading.entry} className="learning-row">
        <p className="learning-line">
          {impossibleSentence(reading, write)} <span className="learning-do">{impossibleWords.todo}</span>
        </p>
        {entries.length === 0 ? null : (
          <button type="button" className="patch" onClick={() => ignore(entries)}>
            {learningWords.leaveOut}
          </button>
        )}
      </div>
    );
  });
}

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

/** The entries to take out so that the place is free of it: this one, and those before it that cannot be either. */
const ignorable = (
  { name }: ImpossibleReading,
  impossible: readonly ImpossibleReading[],
  fitting: SettledFitting,
): readonly number[] => [
  ...new Set(
    impossible.filter((other) => other.name === name && isLeftOutable(fitting, other.entry)).map(({ entry }) => entry),
  ),
];
