import { useEffect } from "react";
import { readingDraftKey } from "../../app/commands";
import { readingName, tapeParts } from "../../app/padProgress";
import type { FittingStore } from "../../app/store";
import type { LevelName } from "../../core/body/vocabulary";
import { useStoreItself } from "../useStore";

/** Whoever turns to another level, or leaves, has finished typing the readings of this one. */
export function useReadingsKept(level: LevelName): void {
  const store = useStoreItself();
  useEffect(() => () => keepReadings(store, level), [store, level]);
}

/** Keeps every reading of a level that was typed and not yet kept; what cannot be read stays as it was typed. */
export function keepReadings(store: FittingStore, level: LevelName): void {
  const at = new Date().toISOString();
  for (const part of tapeParts) {
    const name = readingName(level, part);
    const text = store.getState().fitting.drafts.other[readingDraftKey(name)];
    if (text !== undefined) store.dispatch({ does: "read", name, text, at });
  }
}
