import { useState } from "react";
import { type PlaceReading, readingsOfPlace } from "../../../app/steps/placeReadings";
import { measurementTexts } from "../../../text/measurements";
import { checkStop, tapeTrail } from "../../../text/stops";
import { useDoAndSay } from "../../kit/shelf/useDone";
import { useLengths, useStoreItself } from "../../kit/useStore";
import { MeasureStop } from "../../kit/stop/MeasureStop";
import { StepFrame } from "../../kit/stop/StepFrame";
import type { StepAtHand } from "../../kit/stop/useStep";
import { ReadingPicture } from "../../kit/stop/WorkPictureOf";

/** One place was read twice, and the two readings cannot both be right: which one is? The other is ignored. */
export function TwiceStop({ at }: { readonly at: StepAtHand }) {
  const { step, fitting } = at;
  const { write } = useLengths();
  const [chosen, setChosen] = useState<PlaceReading | null>(null);
  const [isAgain, setAgain] = useState(false);
  const name = step.names[0] ?? "waistGirth";
  const both = readingsOfPlace(fitting, name);
  const keep = useKept(at, both);
  if (isAgain) return <MeasureStop at={at} />;
  return (
    <StepFrame
      at={at}
      trail={tapeTrail}
      act="read"
      kind="working"
      picture={<ReadingPicture at={at} name={name} />}
      slab={{
        words: chosen === null ? checkStop.choose : checkStop.keep(write(chosen.length)),
        press: () => (chosen === null ? undefined : keep(chosen)),
        isReady: chosen !== null,
      }}
      ways={
        <button type="button" className="patch patch-plain" onClick={() => setAgain(true)}>
          {checkStop.again}
        </button>
      }
    >
      <fieldset className="twice">
        <legend>
          {measurementTexts[name].label}. {checkStop.which}
        </legend>
        {both.map((reading, i) => (
          <button
            key={reading.at}
            type="button"
            className="twice-one"
            aria-pressed={chosen?.at === reading.at}
            onClick={() => setChosen(reading)}
          >
            <strong>{write(reading.length)}</strong> {i === 0 ? checkStop.first : checkStop.second}
          </button>
        ))}
      </fieldset>
    </StepFrame>
  );
}

/** Ignores the other reading, and notes the first one once more: said twice, it is not asked about again. */
function useKept({ step, record }: StepAtHand, both: readonly PlaceReading[]): (chosen: PlaceReading) => void {
  const store = useStoreItself();
  const doAndSay = useDoAndSay();
  const { write } = useLengths();
  return (chosen) => {
    const name = step.names[0] ?? "waistGirth";
    const said = checkStop.keep(write(chosen.length));
    const entry = store.getState().fitting.work[chosen.at];
    const text = entry?.did === "measured" ? entry.readings[name] : undefined;
    if (chosen === both[0] && text !== undefined) record(said, { readings: { [name]: text } });
    const others = both.filter(({ at }) => at !== chosen.at).map((reading) => ({ entry: reading.at, name }));
    doAndSay({ does: "ignore", readings: others }, said);
  };
}
