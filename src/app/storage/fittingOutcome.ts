import type { Fitting } from "../../document/fitting";
import { type FailureReason, failureOf } from "./objectStores";
import type { FittingEntry } from "./fittingRecord";
import type { StoredFitting } from "./storedFitting";

/** What came of every wish to the storage. None of these is ever thrown: each is a case that a screen must answer. */
export interface NotRead {
  readonly kind: "notRead";
  readonly reason: FailureReason;
  /** For a report to us, in whatever words the browser used. */
  readonly detail: string;
}

/** What lies under an id and cannot be opened here, or only be looked at; its raw text can be handed out. */
type Unopened = Pick<Exclude<StoredFitting, { readonly kind: "fitting" }>, "kind" | "id" | "rawText">;

export type ListedFitting = { readonly kind: "fitting"; readonly entry: FittingEntry } | Unopened;

export const listedId = (listed: ListedFitting): string => (listed.kind === "fitting" ? listed.entry.id : listed.id);

export type ListOutcome = { readonly kind: "listed"; readonly fittings: readonly ListedFitting[] } | NotRead;

/** One of the list with what it says. */
export type OpenedFitting =
  | { readonly kind: "fitting"; readonly entry: FittingEntry; readonly fitting: Fitting }
  | Unopened;

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
  | Extract<StoredFitting, { readonly kind: "newer" }>
  /** Whether a copy could be laid in quarantine; the original is left where it was either way. */
  | (Extract<StoredFitting, { readonly kind: "unreadable" }> & { readonly quarantined: boolean })
  | { readonly kind: "missing"; readonly id: string }
  | NotRead;

/**
 * Why something was not saved, beyond the failures of the stores themselves.
 * changedElsewhere: another tab got there first, and its work is not overwritten. newerRecord: what lies there was
 * written by a newer release. missing: there is nothing left to change. unwritable: our own text could not be read back.
 */
export type NotSavedReason = FailureReason | "changedElsewhere" | "newerRecord" | "missing" | "unwritable";

export interface NotSaved {
  readonly kind: "notSaved";
  readonly reason: NotSavedReason;
  readonly detail: string;
}

/**
 * What a save found in place of what was kept there before. quarantined: it could not be read; a raw copy is kept.
 * recreated: it was gone, because the browser or somebody cleared it. restored: another tab had removed it. In each case
 * the fitting is there again, with the change, and the person is told.
 */
export type FoundBySave = "quarantined" | "recreated" | "restored";

export type SaveOutcome =
  | { readonly kind: "saved"; readonly entry: FittingEntry; readonly found: readonly FoundBySave[] }
  | NotSaved;

export type ChangeOutcome = { readonly kind: "changed"; readonly entry: FittingEntry } | NotSaved;

export const notSaved = (reason: NotSavedReason, detail: string): NotSaved => ({ kind: "notSaved", reason, detail });

export function notRead(thrown: unknown): NotRead {
  const { reason, message } = failureOf(thrown);
  return { kind: "notRead", reason, detail: message };
}
