import type { Surprise } from "../../core/calibration/believed";
import { type Entry, entryLength, type SettledFitting, type WorkEntry } from "../../document/fitting";
import { learningWords } from "../text/learning";
import { measurementTexts } from "../text/measurements";
import { useDoAndSay } from "../useDone";
import { type LengthWords, useFitting, useLengths } from "../useStore";
import { RefusedRow } from "./RefusedRow";

/** Readings that cannot be: told beside the next action until the place is read again, or left out at a press. */
export function SurpriseRows({ surprises }: { readonly surprises: readonly Surprise[] }) {
  const fitting = useFitting();
  const { write } = useLengths();
  const doAndSay = useDoAndSay();
  return standingOnes(surprises, fitting).map(({ entry, ...surprise }) => (
    <RefusedRow
      key={entry}
      sentence={surpriseSentence(surprise, write)}
      todo={learningWords.surpriseDo}
      onIgnore={() => doAndSay({ does: "leaveOut", entry }, learningWords.leftOut)}
    />
  ));
}

export const surpriseSentence = ({ name, read, expected }: Surprise, write: LengthWords["write"]): string =>
  learningWords.surprise(measurementTexts[name].label, write(read), write(expected));

/** The readings that cannot be and are still the last of their place, each with its entry in the log. */
export const standingOnes = (surprises: readonly Surprise[], fitting: SettledFitting) =>
  surprises.flatMap((surprise) => {
    const entry = standingAt(surprise, fitting);
    return entry === null ? [] : [{ ...surprise, entry }];
  });

/** Whether a reading that cannot be still stands: nothing is planned from it, and no layer eased for it. */
export const isStanding = (surprises: readonly Surprise[], fitting: SettledFitting): boolean =>
  standingOnes(surprises, fitting).length > 0;

/** The entry of the log a surprise comes from, if it is the last reading of its place. */
function standingAt({ name, read }: Surprise, { work, unit }: SettledFitting): number | null {
  const typedIn = (entry: WorkEntry | undefined): readonly Entry[] => {
    if (entry?.did === "trial" && name === "waistGirth")
      return [entry.before, entry.after].filter((typed) => typed !== undefined);
    const reading = entry?.did === "measured" ? entry.readings[name] : undefined;
    return reading === undefined ? [] : [reading];
  };
  const at = work.findLastIndex((entry) => typedIn(entry).length > 0);
  const isIt = typedIn(work[at]).some((typed) => {
    const length = entryLength(typed, unit);
    return length.ok && length.value === read;
  });
  return isIt ? at : null;
}
