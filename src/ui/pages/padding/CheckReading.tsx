import { readingsOfPlace } from "../../../app/steps/placeReadings";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { learningWords } from "../../../text/learning";
import { checkStop } from "../../../text/stops";
import { useDerived } from "../../kit/useDerived";
import { useDoAndSay } from "../../kit/shelf/useDone";
import { useLengths } from "../../kit/useStore";
import type { StepAtHand } from "./useStep";

/** What was typed of a place, what can be read there, and the way to let go of it. */
export function CheckReading({ at, name }: { readonly at: StepAtHand; readonly name: MeasurementName }) {
  const { write } = useLengths();
  const { impossible } = useDerived();
  const doAndSay = useDoAndSay();
  const typed = readingsOfPlace(at.fitting, name).at(-1);
  if (typed === undefined) return null;
  const beyond = impossible.find((one) => one.entry === typed.at && one.name === name);
  const surprise = at.replan.belief.surprises.find((one) => one.name === name);
  return (
    <p className="stop-news">
      <strong>{checkStop.read(write(typed.length))}</strong>{" "}
      {beyond !== undefined ? checkStop.can(write(beyond.least), write(beyond.most)) : null}{" "}
      {beyond === undefined && surprise !== undefined ? checkStop.should(write(surprise.expected)) : null}{" "}
      <button
        type="button"
        className="patch patch-plain"
        onClick={() => doAndSay({ does: "ignore", readings: [{ entry: typed.at, name }] }, learningWords.leftOut)}
      >
        {checkStop.ignore}
      </button>
    </p>
  );
}
