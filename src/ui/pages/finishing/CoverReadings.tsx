import { readingsOfPlace } from "../../../app/steps/placeReadings";
import type { LevelName } from "../../../core/body/vocabulary";
import { measurementTexts } from "../../../text/measurements";
import { checkStop } from "../../../text/stops";
import { IgnoreReadings } from "../../kit/stop/IgnoreReadings";
import type { StepAtHand } from "../../kit/stop/useStep";
import { useLengths } from "../../kit/useStore";

/** The readings that ask for a correction of the cover, each with the way to let go of it: it is then asked for again. */
export const CoverReadings = ({ at }: { readonly at: StepAtHand }) => (
  <>
    {at.step.levels.map((level) => (
      <CoverReading key={level} at={at} level={level} />
    ))}
  </>
);

function CoverReading({ at: { fitting }, level }: { readonly at: StepAtHand; readonly level: LevelName }) {
  const { write } = useLengths();
  const [girth, front] = ([`${level}Girth`, `${level}FrontArc`] as const).map((name) =>
    readingsOfPlace(fitting, name, "cover").map((reading) => ({ ...reading, name })),
  );
  const last = girth?.at(-1);
  if (last === undefined) return null;
  // Over the cover front and all around are one look at the tape, however often it was taken.
  const readings = [...(girth ?? []), ...(front ?? [])].map(({ at, name }) => ({ entry: at, name }));
  return (
    <p className="stop-news">
      <strong>
        {measurementTexts[last.name].label}: {checkStop.read(write(last.length))}
      </strong>{" "}
      <IgnoreReadings readings={readings} />
    </p>
  );
}
