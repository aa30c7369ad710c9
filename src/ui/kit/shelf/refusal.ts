import type { NotSaved } from "../../../app/storage/fittingOutcome";
import type { OpenState } from "../../../app/storage/openFitting";
import { refusedTexts } from "../../../text/files";
import { troubleTexts } from "../../../text/library";

/** What a person is told where a wish was refused; null where it was done. */
export const refusalOf = (outcome: { readonly kind: string } | NotSaved): string | null =>
  isNotSaved(outcome) ? refusedTexts[outcome.reason] : null;

const isNotSaved = (outcome: { readonly kind: string } | NotSaved): outcome is NotSaved => outcome.kind === "notSaved";

/** The first of several refusals. */
export const refusalAmong = (outcomes: readonly ({ readonly kind: string } | NotSaved)[]): string | null =>
  outcomes.map(refusalOf).find((refusal) => refusal !== null) ?? null;

/** Why the newest change of the open fitting is not saved; that is tried again by itself. */
export const unsavedText = (open: OpenState | null): string =>
  troubleTexts[open?.saving.kind === "notSaved" ? open.saving.refusal.reason : "failed"];
