import { isLeftOutable } from "../../../app/session/commands";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { type BattingRole, battingRoles } from "../../../core/material";
import { type Millimetres, mm } from "../../../core/units";
import { type Entry, entryLength, type SettledFitting, type WorkEntry } from "../../../document/fitting";
import { type ReadingCare as Care, errorWords, impossibleWords, learningWords } from "../../../text/learning";
import { measurementTexts } from "../../../text/measurements";
import "../../kit/learning/learning.css";
import { useDoAndSay } from "../../kit/shelf/useDone";
import { useDerived } from "../../kit/useDerived";
import { useDispatch, useFitting, useLengths, useUnit } from "../../kit/useStore";
import { ThicknessPart } from "./ThicknessPart";
import { Segments } from "../../kit/Segments";
import { writtenLength } from "../../../text/writtenLength";

/** What the tape has shown: how much a layer adds with its plot, how closely is measured, and the readings behind it. */
export function LearningPart() {
  const { finishingBatting } = useFitting();
  const roles: readonly BattingRole[] = finishingBatting === undefined ? ["building"] : battingRoles;
  return (
    <section className="learning stitched">
      <h2>{learningWords.title}</h2>
      {roles.map((role) => (
        <ThicknessPart key={role} role={role} isNamed={roles.length > 1} />
      ))}
      <ReadingCare />
      <ReadingsBehind />
    </section>
  );
}

/** How closely this person reads a tape: three hands to choose from, the middle one to begin with. */
const cares: readonly { readonly care: Care; readonly errorMm: number }[] = [
  { care: "careful", errorMm: 3 },
  { care: "usual", errorMm: 5 },
  { care: "hasty", errorMm: 10 },
];

function ReadingCare() {
  const { lengths } = useDerived();
  const unit = useUnit();
  const dispatch = useDispatch();
  if (lengths === null) return null;
  const write = (errorMm: number) => writtenLength(mm(errorMm), unit === "in" ? "1/16 in" : "1 mm");
  return (
    <fieldset className="reading-care">
      <legend>{errorWords.title}</legend>
      <Segments
        choices={cares.map(({ care, errorMm }) => ({
          key: care,
          words: `${errorWords.choice[care]}: ${write(errorMm)}`,
          isChosen: Math.abs(lengths.readingError - errorMm) < 0.01,
          choose: () => dispatch({ does: "setReadingError", text: `${errorMm} mm` }),
        }))}
      />
      <p className="quiet">{errorWords.explain(write(lengths.readingError))}</p>
    </fieldset>
  );
}

/** Every reading the calibration rests on, the last one first, and the way to leave out one that was a slip. */
function ReadingsBehind() {
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
