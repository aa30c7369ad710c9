import { readingsOfPlace } from "../../../app/steps/placeReadings";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { learningWords } from "../../../text/learning";
import { tuneWays } from "../../../text/stops";
import { useDoAndSay } from "../../kit/shelf/useDone";
import type { StepAtHand } from "./useStep";

/** Small beside the act: leave it as it is, or ignore the reading that asks for it. */
export function TuneWays({ at: { step, fitting, passOver } }: { readonly at: StepAtHand }) {
  const doAndSay = useDoAndSay();
  const { act } = step;
  if (act === null) return null;
  const { level, half } = act.off;
  const names: readonly MeasurementName[] = [
    half === "front" ? `${level}FrontArc` : `${level}BackArc`,
    `${level}Girth`,
  ];
  const readings = names.flatMap((name) =>
    readingsOfPlace(fitting, name)
      .slice(-1)
      .map(({ at }) => ({ entry: at, name })),
  );
  return (
    <>
      <button type="button" className="patch patch-plain" onClick={() => passOver(tuneWays.leave)}>
        {tuneWays.leave}
      </button>
      {readings.length === 0 ? null : (
        <button
          type="button"
          className="patch patch-plain"
          onClick={() => doAndSay({ does: "ignore", readings }, learningWords.leftOut)}
        >
          {tuneWays.ignore}
        </button>
      )}
    </>
  );
}
