import type { ListedFitting } from "../../app/storage/fittingOutcome";
import type { Keeping } from "../../app/storage/keeping";

/** A fitting of the list that can be read. */
export type ListedEntry = Extract<ListedFitting, { readonly kind: "fitting" }>;

/** What every part of a tag needs: its fitting, the others on the shelf, and a way to say what came of something. */
export interface TagProps {
  readonly keeping: Keeping;
  readonly listed: ListedEntry;
  readonly others: readonly ListedEntry[];
  readonly onRemoved: (listed: ListedEntry) => void;
  readonly say: (sentence: string) => void;
}

export type TagPanel = "actions" | "share" | "compare";
