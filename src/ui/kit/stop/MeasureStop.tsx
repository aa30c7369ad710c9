import { paddedDraftKey } from "../../../app/session/commands";
import { readingsOfPlace } from "../../../app/steps/placeReadings";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { mm } from "../../../core/units";
import { learningWords } from "../../../text/learning";
import { measurementTexts } from "../../../text/measurements";
import { stepWords } from "../../../text/steps";
import { bandWords, checkStop, tapeTrail } from "../../../text/stops";
import { useDoAndSay } from "../shelf/useDone";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";
import { Bands } from "./Bands";
import { ReadingInput } from "./ReadingInput";
import { ReadingParts } from "./ReadingParts";
import { SaveSlab } from "./SaveSlab";
import { StepFrame } from "./StepFrame";
import { ReadingPicture } from "./WorkPictureOf";
import { useReadingAsked } from "./useReadingAsked";
import type { StepAtHand } from "./useStep";

/** The readings of one level, one after the other: what is typed goes to the one that is asked, and the last one goes on by itself. */
export function MeasureStop({ at }: { readonly at: StepAtHand }) {
  const { step, saying } = at;
  const reading = useReadingAsked(at);
  const { level, names, asked, next, keep, leaveOut, isUnknown } = reading;
  const expected = mm(step.expected[asked] ?? 0);
  const one = { ...step, levels: [level], names: [asked] };
  const [title, how] = step.do === "check" ? at.words : stepWords(one, saying);
  const label = measurementTexts[asked].label;
  return (
    <StepFrame
      at={at}
      trail={step.do === "read-cover" ? {} : tapeTrail}
      act="read"
      kind="reading"
      title={title}
      sentence={step.do === "check" ? "" : how}
      speech={`${title} ${how}`}
      picture={<ReadingPicture at={at} name={asked} />}
      news={step.do === "check" ? <CheckReading at={at} name={asked} /> : null}
      slab={<SaveSlab draftKey={paddedDraftKey(asked)} next={next} expected={expected} press={keep} />}
      route={names.length > 1 ? <ReadingParts expected={step.expected} reading={reading} /> : null}
      ways={
        <button type="button" className="patch patch-plain" onClick={leaveOut}>
          {asked.endsWith("Girth") ? bandWords.leaveAllOut : bandWords.leaveOut}
        </button>
      }
    >
      <ReadingInput
        draftKey={reading.draftKey}
        label={isUnknown ? bandWords.nextReading : label}
        expected={expected}
        isRange
        onEnter={keep}
      />
      <Bands draftKey={paddedDraftKey(asked)} expected={expected} />
    </StepFrame>
  );
}

/** What was typed of a place, what can be read there, and the way to let go of it. */
function CheckReading({ at, name }: { readonly at: StepAtHand; readonly name: MeasurementName }) {
  const { write } = useLengths();
  const { impossible } = useDerived();
  const doAndSay = useDoAndSay();
  const typed = readingsOfPlace(at.fitting, name).at(-1);
  if (typed === undefined) return null;
  const beyond = impossible.find((one) => one.entry === typed.at && one.name === name);
  const outlier = at.replan.calibration.outliers.find((one) => one.name === name);
  return (
    <p className="stop-news">
      <strong>{checkStop.read(write(typed.length))}</strong>{" "}
      {beyond !== undefined ? checkStop.can(write(beyond.least), write(beyond.most)) : null}{" "}
      {beyond === undefined && outlier !== undefined ? checkStop.should(write(outlier.expected)) : null}{" "}
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
