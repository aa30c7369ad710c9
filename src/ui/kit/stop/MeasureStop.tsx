import { useCallback, useMemo } from "react";
import { paddedDraftKey } from "../../../app/session/commands";
import { readingsOfPlace } from "../../../app/steps/placeReadings";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { type Millimetres, mm } from "../../../core/units";
import { learningWords } from "../../../text/learning";
import { measurementTexts } from "../../../text/measurements";
import { stepWords } from "../../../text/steps";
import { bandWords, checkStop, tapeTrail } from "../../../text/stops";
import { useDoAndSay } from "../shelf/useDone";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";
import { Bands, ReadingInput } from "./ReadingInput";
import { StepFrame } from "./StepFrame";
import { StopSlab } from "./StopSlab";
import { ReadingPicture } from "./WorkPictureOf";
import { type ReadingAsked, type StepAtHand, useReadingAsked } from "./useStep";
import { useTypedLength } from "./useTypedLength";

/** The readings of one level, one after the other: what is typed goes to the one that is asked, and the last one goes on by itself. */
export function MeasureStop({ at }: { readonly at: StepAtHand }) {
  const { step, saying } = at;
  const level = step.levels[0] ?? "waist";
  const names = step.names.filter((name) => name.startsWith(level));
  const reading = useReadingAsked(at, names);
  const { asked, next, keep, leaveOut } = reading;
  const draftKey = paddedDraftKey(asked);
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
      slab={<SaveSlab draftKey={draftKey} next={next} expected={expected} press={keep} />}
      route={names.length > 1 ? <Parts names={names} expected={step.expected} reading={reading} /> : null}
      ways={
        <button type="button" className="patch patch-plain" onClick={leaveOut}>
          {asked.endsWith("Girth") ? bandWords.leaveAllOut : bandWords.leaveOut}
        </button>
      }
    >
      <ReadingInput draftKey={draftKey} label={label} expected={expected} isRange onEnter={keep} />
      <Bands draftKey={draftKey} expected={expected} />
    </StepFrame>
  );
}

interface SaveSlabProps {
  readonly draftKey: string;
  readonly next: MeasurementName | null;
  readonly expected: Millimetres;
  readonly press: () => void;
}

/** Says what would be saved, letter by letter. */
function SaveSlab({ draftKey, next, expected, press }: SaveSlabProps) {
  const { write } = useLengths();
  const { length } = useTypedLength(draftKey);
  const saving = useCallback(
    (one: Millimetres) => bandWords.save(write(one), next === null ? null : partOf(next)),
    [write, next],
  );
  const longest = useMemo(
    () => longestOf([bandWords.nothingYet, ...lengthsNear(expected).map(saving)]),
    [expected, saving],
  );
  return (
    <StopSlab
      words={length === null ? bandWords.nothingYet : saving(length)}
      longest={longest}
      press={press}
      isReady={length !== null}
    />
  );
}

/** Of lengths near one some have a fraction of the unit at hand, and take the most room. */
const lengthsNear = (expected: Millimetres): readonly Millimetres[] => [
  mm(expected),
  mm(expected + 3),
  mm(expected + 10),
];

const longestOf = (words: readonly string[]): string =>
  words.reduce((longest, one) => (one.length > longest.length ? one : longest));

type Part = keyof typeof bandWords.parts;

const partOf = (name: MeasurementName): string =>
  bandWords.parts[(["Girth", "FrontArc", "BackArc"] as const).find((part) => name.endsWith(part)) ?? ("Girth" as Part)];

interface PartsProps {
  readonly names: readonly MeasurementName[];
  readonly expected: StepAtHand["step"]["expected"];
  readonly reading: ReadingAsked;
}

/** The readings of this level side by side, filled in as they come; a press takes one of them again. */
function Parts({ names, expected, reading }: PartsProps) {
  return (
    <ul className="reading-parts">
      {names.map((name) => (
        <li key={name}>
          <PartButton name={name} expected={mm(expected[name] ?? 0)} reading={reading} />
        </li>
      ))}
    </ul>
  );
}

interface PartButtonProps {
  readonly name: MeasurementName;
  readonly expected: Millimetres;
  readonly reading: ReadingAsked;
}

function PartButton({ name, expected, reading }: PartButtonProps) {
  const { write } = useLengths();
  const { length } = useTypedLength(paddedDraftKey(name));
  const longest = useMemo(() => longestOf(lengthsNear(expected).map(write)), [expected, write]);
  return (
    <button type="button" aria-current={name === reading.asked ? "step" : undefined} onClick={() => reading.take(name)}>
      {partOf(name)}{" "}
      <strong className="kept-room" data-longest={longest}>
        <span>{length === null ? "–" : write(length)}</span>
      </strong>
    </button>
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
