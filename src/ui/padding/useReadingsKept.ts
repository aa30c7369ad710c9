import { useEffect } from "react";
import { readingDraftKey } from "../../app/commands";
import { readingName, tapeParts } from "../../app/padProgress";
import type { FittingStore } from "../../app/store";
import type { LevelName } from "../../core/body/vocabulary";
import { useStoreItself } from "../useStore";

/** Where the tape lies while it is read: on the padding, or on the cover over it. */
export type ReadOver = "padding" | "cover";

/** Whoever turns to another level, or leaves, has finished typing the readings of this one. */
export function useReadingsKept(level: LevelName, over: ReadOver): void {
  const store = useStoreItself();
  useEffect(() => () => keepReadings(store, level, over), [store, level, over]);
}

/** Keeps every reading of a level that was typed and not yet kept; what cannot be read stays as it was typed. */
export function keepReadings(store: FittingStore, level: LevelName, over: ReadOver): void {
  const at = new Date().toISOString();
  for (const part of tapeParts) {
    const name = readingName(level, part);
    const text = store.getState().fitting.drafts.other[readingDraftKey(name)];
    if (text !== undefined) store.dispatch({ does: "read", name, text, ...overEntry(over), at });
  }
}

export const overEntry = (over: ReadOver): { readonly over?: "cover" } => (over === "cover" ? { over } : {});
