import { useEffect, useState } from "react";
import { leftToDo } from "../../../app/session/leftToDo";
import type { ListedFitting, OpenedFitting } from "../../../app/storage/fittingOutcome";
import type { FittingEntry } from "../../../app/storage/fittingRecord";
import type { FittingStorage } from "../../../app/storage/fittingStorage";
import type { Autosave } from "../../../app/storage/autosave";
import type { Fitting } from "../../../document/fitting";
import { libraryWords, progressTexts } from "../../../text/library";
import { leftToDoText } from "../../../text/leftToDo";

/** A fitting of the list that can be read. */
export type ListedEntry = Extract<ListedFitting, { readonly kind: "fitting" }>;

export const titleOf = ({ entry }: ListedEntry): string => (entry.title === "" ? libraryWords.untitled : entry.title);

/** What every part of a tag needs: its fitting, the others on the shelf, and a way to say what came of something. */
export interface TagProps {
  readonly autosave: Autosave;
  readonly listed: ListedEntry;
  readonly others: readonly ListedEntry[];
  /** Something was done with a fitting, and there is a way back. */
  readonly onDone: (sentence: string, undo: WayBack) => void;
  readonly say: (sentence: string) => void;
}

/** Undoes what was done; null where that was done, or why it was not. */
export type WayBack = () => Promise<string | null>;

export type TagPanel = "actions" | "share" | "compare";

/** A fitting of the list with what it says, which is read only when it is asked for. */
type OpenedEntry = Extract<OpenedFitting, { readonly kind: "fitting" }>;

/** Null where it cannot be read after all, or is not there any more. */
export async function openedEntry(storage: FittingStorage, id: string): Promise<OpenedEntry | null> {
  const read = await storage.read([id]);
  const [found] = read.kind === "read" ? read.fittings : [];
  return found?.kind === "fitting" ? found : null;
}

/** What a fitting of the list says, as soon as it has been read. */
export function useOpened(storage: FittingStorage, { id, revision }: FittingEntry): Fitting | null {
  const [fitting, setFitting] = useState<Fitting | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new revision is the reason to read again.
  useEffect(() => {
    let isStale = false;
    void openedEntry(storage, id).then((opened) => {
      if (!isStale) setFitting(opened?.fitting ?? null);
    });
    return () => {
      isStale = true;
    };
  }, [storage, id, revision]);
  return fitting;
}

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
    return leftToDoText(leftToDo(fitting));
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
