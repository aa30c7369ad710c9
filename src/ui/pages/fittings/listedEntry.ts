import type { ListedFitting } from "../../../app/storage/fittingOutcome";
import type { Keeping } from "../../../app/storage/keeping";
import { libraryWords } from "../../../text/library";

/** A fitting of the list that can be read. */
export type ListedEntry = Extract<ListedFitting, { readonly kind: "fitting" }>;

export const titleOf = ({ entry }: ListedEntry): string => (entry.title === "" ? libraryWords.untitled : entry.title);

/** What every part of a tag needs: its fitting, the others on the shelf, and a way to say what came of something. */
export interface TagProps {
  readonly keeping: Keeping;
  readonly listed: ListedEntry;
  readonly others: readonly ListedEntry[];
  /** Something was done with a fitting, and there is a way back. */
  readonly onDone: (sentence: string, undo: WayBack) => void;
  readonly say: (sentence: string) => void;
}

/** Undoes what was done; null where that was done, or why it was not. */
export type WayBack = () => Promise<string | null>;

export type TagPanel = "actions" | "share" | "compare";
