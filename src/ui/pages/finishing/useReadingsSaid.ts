import { useEffect, useRef } from "react";
import { type PadProgress, readingName, tapeParts } from "../../../app/progress/padProgress";
import { levelNames } from "../../../core/body/vocabulary";
import type { Plan } from "../../../core/plan/plan";
import { impossibleSentence } from "./impossible";
import { remainingWords, standingOf } from "../../../text/remaining";
import { paddingWords, tapePartNames } from "../../../text/padding";
import { levelWords } from "../../../text/pictures";
import { useDerived } from "../../kit/useDerived";
import { useSayDone } from "../../kit/shelf/useDone";
import { useFitting, useLengths, useStoreItself } from "../../kit/useStore";

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
