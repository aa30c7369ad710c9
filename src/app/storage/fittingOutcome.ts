import type { Fitting } from "../../document/fitting";
import type { FittingProblem } from "../../document/fittingProblem";
import type { FailureReason } from "./drawers";
import type { FittingEntry } from "./fittingRecord";

/** What came of every wish to the storage. None of these is ever thrown: each is a case that a screen must answer. */
export interface NotRead {
  readonly kind: "notRead";
  readonly reason: FailureReason;
  /** For a report to us, in whatever words the browser used. */
  readonly detail: string;
}

export type ListedFitting =
  | { readonly kind: "fitting"; readonly entry: FittingEntry }
  /** Kept by a newer release; it can be looked at and handed out, not changed. */
  | { readonly kind: "newer"; readonly id: string; readonly rawText: string }
  | { readonly kind: "unreadable"; readonly id: string; readonly rawText: string };

export const listedId = (listed: ListedFitting): string => (listed.kind === "fitting" ? listed.entry.id : listed.id);

export type ListOutcome = { readonly kind: "listed"; readonly fittings: readonly ListedFitting[] } | NotRead;

/** One of the list with what it says. */
export type OpenedFitting =
  | { readonly kind: "fitting"; readonly entry: FittingEntry; readonly fitting: Fitting }
  | Exclude<ListedFitting, { readonly kind: "fitting" }>;

export type ReadOutcome = { readonly kind: "read"; readonly fittings: readonly OpenedFitting[] } | NotRead;

/** Earlier and undone states of a fitting; the last of the past is one step back, the first of the future one forward. */
export interface FittingHistory {
  readonly past: readonly Fitting[];
  readonly future: readonly Fitting[];
}

export type LoadOutcome =
  | {
      readonly kind: "loaded";
      readonly entry: FittingEntry;
      readonly fitting: Fitting;
      readonly history: FittingHistory;
      /** True when there were steps to undo that could not be read; their raw copy lies in quarantine. */
      readonly historyLost: boolean;
    }
  | { readonly kind: "newer"; readonly id: string; readonly asUnderstood: Fitting | null; readonly rawText: string }
  | {
      readonly kind: "unreadable";
      readonly id: string;
      readonly problems: readonly FittingProblem[];
      readonly rawText: string;
      /** Whether a copy could be laid in quarantine; the original is left where it was either way. */
      readonly quarantined: boolean;
    }
  | { readonly kind: "missing"; readonly id: string }
  | NotRead;

/**
 * Why something was not saved, beyond the failures of the drawers themselves.
 * changedElsewhere: another tab or device got there first, and its work is not overwritten. newerRecord: what lies
 * there was written by a newer release. missing: there is nothing left to change. unwritable: our own text could not be
 * read back, so it was not let near the record that can.
 */
export type NotSavedReason = FailureReason | "changedElsewhere" | "newerRecord" | "missing" | "unwritable";

export interface NotSaved {
  readonly kind: "notSaved";
  readonly reason: NotSavedReason;
  readonly detail: string;
}

/**
 * quarantined: what lay there could not be read any more; a raw copy of it went into quarantine in the same step.
 * recreated: it had been saved before and was gone, because the browser or somebody cleared it. restored: it had been
 * removed, in another tab. In each case the fitting is there again, with the change.
 */
export type FoundBySave = "quarantined" | "recreated" | "restored";

export type SaveOutcome =
  | {
      readonly kind: "saved";
      readonly entry: FittingEntry;
      /** What the save found in place of what was kept there before, if it did; the person is told. */
      readonly found: readonly FoundBySave[];
    }
  | NotSaved;

export const notSaved = (reason: NotSavedReason, detail: string): NotSaved => ({ kind: "notSaved", reason, detail });
