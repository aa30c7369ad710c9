import { useEffect, useState } from "react";
import type { FittingEntry } from "../../../app/storage/fittingRecord";
import type { FittingStorage } from "../../../app/storage/fittingStorage";
import type { Fitting } from "../../../document/fitting";
import { progressTexts } from "../../../text/library";
import { girthsLeft, leftToDo } from "./leftToDo";
import { openedEntry } from "./openedEntry";

/**
 * What is left to do in a fitting of the list, in a few words. It is read and planned when the browser has nothing better
 * to do, one after the other, since that takes a while for a whole list.
 */
export function useProgress(storage: FittingStorage, entry: FittingEntry): string {
  const { id } = entry;
  const key = stateKey(entry);
  const [text, setText] = useState(() => known.get(key) ?? "");
  useEffect(() => {
    const before = known.get(key);
    if (before !== undefined) {
      setText(before);
      return;
    }
    let isStale = false;
    const callOff = whenIdle(async () => {
      const opened = await openedEntry(storage, id);
      if (isStale || opened === null) return;
      const found = leftOrFailed(opened.fitting);
      known.set(stateKey(opened.entry), found);
      setText(found);
    });
    return () => {
      isStale = true;
      callOff();
    };
  }, [storage, id, key]);
  return text;
}

/** One fitting that the planner fails on leaves the rest of the list as it is. */
function leftOrFailed(fitting: Fitting): string {
  try {
    return girthsLeft(fitting) ?? leftToDo(fitting);
  } catch {
    return progressTexts.failed;
  }
}

/** What was worked out in this visit, by fitting and state. */
const known = new Map<string, string>();

const stateKey = ({ id, revision, changedAt }: FittingEntry): string => `${id} ${revision} ${changedAt}`;

function whenIdle(work: () => void): () => void {
  if (typeof window.requestIdleCallback === "function") {
    const handle = window.requestIdleCallback(work);
    return () => window.cancelIdleCallback(handle);
  }
  const timer = window.setTimeout(work, 50);
  return () => window.clearTimeout(timer);
}
