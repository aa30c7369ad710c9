import type { LevelName } from "../../core/body/vocabulary";
import { type LengthProblem, parseLength } from "../../core/lengthText";
import { readingName, tapeParts } from "../progress/padProgress";
import { readingDraftKey } from "./commands";
import type { FittingStore } from "./store";

/** Keeps every reading of a level that was typed and not yet kept; what cannot be read stays as it was typed. */
export function keepReadings(store: FittingStore, level: LevelName): void {
  const at = new Date().toISOString();
  for (const part of tapeParts) {
    const name = readingName(level, part);
    const text = store.getState().fitting.drafts.other[readingDraftKey(name)];
    if (text !== undefined) store.dispatch({ does: "read", name, text, over: "cover", at });
  }
}

/** What is the matter with the first text of a level that could not be kept; null where none is left. */
export function unreadable(store: FittingStore, level: LevelName): LengthProblem | null {
  const { drafts, unit } = store.getState().fitting;
  for (const part of tapeParts) {
    const text = drafts.other[readingDraftKey(readingName(level, part))];
    const length = text === undefined ? null : parseLength(text, unit);
    if (length !== null && !length.ok) return length.problem;
  }
  return null;
}
