import type { Surprise } from "../../core/calibration/believed";
import { entryLength, type SettledFitting } from "../../document/fitting";
import { useAnnounce } from "../Announcer";
import { learningWords } from "../text/learning";
import { measurementTexts } from "../text/measurements";
import { type LengthWords, useDispatch, useFitting, useLengths } from "../useStore";

/** Readings that cannot be: told beside the next action until the place is read again, or left out at a press. */
export function SurpriseRows({ surprises }: { readonly surprises: readonly Surprise[] }) {
  const fitting = useFitting();
  const { write } = useLengths();
  const dispatch = useDispatch();
  const announce = useAnnounce();
  return standingOnes(surprises, fitting).map(({ entry, ...surprise }) => (
    <div key={entry} className="learning-row">
      <p className="learning-line">
        {surpriseSentence(surprise, write)} <span className="learning-do">{learningWords.surpriseDo}</span>
      </p>
      <button
        type="button"
        className="patch"
        onClick={() => {
          dispatch({ does: "leaveOut", entry });
          announce(learningWords.leftOut);
        }}
      >
        {learningWords.leaveOut}
      </button>
    </div>
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
  const at = work.findLastIndex((entry) => entry.did === "measured" && entry.readings[name] !== undefined);
  const last = work[at];
  const typed = last?.did === "measured" ? last.readings[name] : undefined;
  const length = typed === undefined ? null : entryLength(typed, unit);
  return length?.ok && length.value === read ? at : null;
}
