import { isLeftOutable } from "../../../app/session/commands";
import type { MeasurementName } from "../../../core/body/vocabulary";
import type { Millimetres } from "../../../core/units";
import { entryLength, type Entry, type SettledFitting, type WorkEntry } from "../../../document/fitting";
import { impossibleWords, learningWords } from "../../../text/learning";
import { measurementTexts } from "../../../text/measurements";
import { useDerived } from "../../kit/useDerived";
import { useDoAndSay } from "../../kit/shelf/useDone";
import { useFitting, useLengths } from "../../kit/useStore";

/** Every reading the belief rests on, the last one first, and the way to leave out one that was a slip. */
export function ReadingsBehind() {
  const fitting = useFitting();
  const { impossible } = useDerived();
  const { write } = useLengths();
  const doAndSay = useDoAndSay();
  const read = fitting.work
    .flatMap((entry, at) =>
      isRead(entry)
        ? [{ at, text: readingText(entry, fitting, write), isUsed: !impossible.some((one) => one.entry === at) }]
        : [],
    )
    .toReversed();
  if (read.length === 0) return null;
  const leaveOut = (at: number) => doAndSay({ does: "leaveOut", entry: at }, learningWords.leftOut);
  return (
    <details className="readings-behind">
      <summary className="fold">{learningWords.readingsTitle}</summary>
      <ul>
        {read.map(({ at, text, isUsed }) => (
          <li key={at} className="learning-row">
            <span>
              {text}
              {isUsed ? null : <span className="quiet small"> ({impossibleWords.behind})</span>}
            </span>
            {isLeftOutable(fitting, at) ? (
              <button
                type="button"
                className="patch"
                aria-label={learningWords.leaveOutOf(text)}
                onClick={() => leaveOut(at)}
              >
                {learningWords.leaveOut}
              </button>
            ) : isUsed ? (
              <span className="quiet small">{learningWords.settled}</span>
            ) : null}
          </li>
        ))}
      </ul>
    </details>
  );
}

type MeasuredEntry = Extract<WorkEntry, { readonly did: "measured" }>;
type TrialEntry = Extract<WorkEntry, { readonly did: "trial" }> & { readonly before: Entry; readonly after: Entry };
type ReadEntry = MeasuredEntry | TrialEntry;

const isRead = (entry: WorkEntry): entry is ReadEntry =>
  entry.did === "measured"
    ? Object.keys(entry.readings).length > 0
    : entry.did === "trial" && entry.before !== undefined && entry.after !== undefined;

function readingText(entry: ReadEntry, { unit }: SettledFitting, write: (length: Millimetres) => string): string {
  const written = (typed: Entry): string => {
    const length = entryLength(typed, unit);
    return length.ok ? write(length.value) : String(typed);
  };
  if (entry.did === "trial") return learningWords.trialRead(entry.batting, written(entry.before), written(entry.after));
  return Object.entries(entry.readings)
    .map(([name, typed]) => learningWords.read(measurementTexts[name as MeasurementName].label, written(typed)))
    .join(", ");
}
