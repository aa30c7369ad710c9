import { useEffect, useRef } from "react";
import {
  type LevelNow,
  levelWithReadings,
  type NowReading,
  type PadProgress,
  readingName,
  type TapePart,
  tapeParts,
} from "../../../app/progress/padProgress";
import type { ImpossibleReading } from "../../../app/progress/replay";
import { standingImpossible } from "../../../app/progress/standingImpossible";
import { readingDraftKey } from "../../../app/session/commands";
import { keepReadings } from "../../../app/session/typedReadings";
import { type LevelName, levelNames, type MeasurementName } from "../../../core/body/vocabulary";
import { parseLength } from "../../../core/lengthText";
import type { Plan } from "../../../core/plan/plan";
import type { Millimetres } from "../../../core/units";
import { impossibleWords } from "../../../text/learning";
import { measurementTexts } from "../../../text/measurements";
import { paddingWords, tapePartNames } from "../../../text/padding";
import { levelWords } from "../../../text/pictures";
import { remainingWords, standingOf } from "../../../text/remaining";
import { useSayDone } from "../../kit/shelf/useDone";
import { useDerived } from "../../kit/useDerived";
import {
  type LengthWords,
  useDraft,
  useDraftsSoon,
  useFitting,
  useLengths,
  useStoreItself,
  useUnit,
} from "../../kit/useStore";

/** A stretch of the tape while readings are typed: what is written in its own field, and what the tape reads with it. */
interface TypedReading {
  readonly draft: string | undefined;
  readonly now: NowReading;
}

/**
 * What is typed into the stretch itself counts at once; what is typed into the two others, from which it may follow, a
 * frame later, so that a letter draws one stretch anew before its frame and not three.
 */
export function useTypedReading(level: LevelName, part: TapePart, kept: LevelNow): TypedReading {
  const unit = useUnit();
  const own = readingDraftKey(readingName(level, part));
  const draft = useDraft("other", own);
  const drafts = useDraftsSoon().other;
  const typed = (other: TapePart): Millimetres | undefined => {
    const key = readingDraftKey(readingName(level, other));
    const text = key === own ? draft : drafts[key];
    const length = text === undefined ? null : parseLength(text, unit);
    return length?.ok ? length.value : undefined;
  };
  const now = levelWithReadings(kept, {
    girth: typed("girth"),
    frontArc: typed("frontArc"),
    backArc: typed("backArc"),
  });
  return { draft, now: now[part] };
}

/** Whoever turns to another level, or leaves, has finished typing the readings of this one. */
export function useReadingsKept(level: LevelName): void {
  const store = useStoreItself();
  useEffect(() => () => keepReadings(store, level), [store, level]);
}

/** Says of every reading, when it is kept and not at its letters, what it was taken for and what is left to go. */
export function useReadingsSaid(plan: Plan, progress: PadProgress): void {
  const { work } = useFitting();
  const { step, write } = useLengths();
  const sayDone = useSayDone();
  const { impossible } = useDerived();
  const store = useStoreItself();
  const heard = useRef(work);
  useEffect(() => {
    const before = heard.current;
    heard.current = work;
    // Another fitting that was opened is no reading.
    if (store.getState().cause !== "read" || work.length <= before.length) return;
    const kept = new Set(
      work.slice(before.length).flatMap((entry) => (entry.did === "measured" ? Object.keys(entry.readings) : [])),
    );
    const sentences = levelNames.flatMap((level) =>
      tapeParts.flatMap((part) => {
        const wanted = plan.levels.find(({ name }) => name === level)?.body[part].value;
        if (wanted === undefined || !kept.has(readingName(level, part))) return [];
        const refused = impossible.find(
          ({ entry, name }) => entry >= before.length && name === readingName(level, part),
        );
        if (refused !== undefined) return [impossibleSentence(refused, write)];
        const now = progress.now[level][part];
        const what = paddingWords.reading(levelWords[level], tapePartNames[part]);
        const left = remainingWords({ part, wanted, now: now.value, standing: standingOf(now) }, step);
        return [paddingWords.kept(what, write(now.value), left)];
      }),
    );
    if (sentences.length > 0) sayDone(sentences.join(" "));
  }, [work, plan, progress, impossible, step, write, sayDone, store]);
}

interface Refused {
  readonly refusedText: string;
  readonly refusedWhy: string;
}

/** What was typed of a place last, where that cannot be, and why. */
export function useRefused(): (name: MeasurementName) => Refused | undefined {
  const fitting = useFitting();
  const { impossible } = useDerived();
  const { write } = useLengths();
  const standing = standingImpossible(impossible, fitting);
  return (name) => {
    const reading = standing.find((one) => one.name === name);
    const entry = reading === undefined ? undefined : fitting.work[reading.entry];
    if (reading === undefined || entry?.did !== "measured") return undefined;
    const { least, most } = reading;
    return {
      refusedText: String(entry.readings[name] ?? ""),
      refusedWhy: impossibleWords.field(write(least), write(most)),
    };
  };
}

/** A reading that this form with these pieces on cannot give: why, in a sentence. */
const impossibleSentence = ({ name, read, least, most }: ImpossibleReading, write: LengthWords["write"]): string =>
  impossibleWords.why(measurementTexts[name].label, write(read), write(least), write(most));
