import type { Fitting } from "../../document/fitting";
import { type Drawers, type DrawersToChange, failureOf } from "./drawers";
import { type FittingHistory, type FoundBySave, notSaved, type NotSaved, type SaveOutcome } from "./fittingOutcome";
import { entryOf, type FittingRecord, readRecord, sealedRecord } from "./fittingRecord";
import { writeNewRecord, writeRecord } from "./fittingSummary";
import { fittingText, isReadBack, readText } from "./fittingText";
import { isHistoryOf, sealedHistory } from "./historyRecord";
import { layInQuarantine } from "./quarantine";
import { lostInWriting } from "./readBack";

/** One change to be kept, and what its writer believes lies in the drawer now. */
export interface SaveRequest {
  readonly id: string;
  /** The revision this change was made on; 0 for a fitting that was never saved. */
  readonly baseRevision: number;
  /** Names this very save, so that trying it again is harmless. */
  readonly mark: string;
  /** Marks of earlier saves of this writer that may have been kept although they seemed to fail. */
  readonly earlierMarks: readonly string[];
  readonly fitting: Fitting;
  readonly history: FittingHistory;
}

/**
 * Keeps one change whole or not at all: the fitting and its steps to undo in one transaction. What lies there is
 * overwritten only if it is the revision the change was made on; what cannot be read goes into quarantine first. Saved is
 * said of what has been read again and is as it was written.
 */
export async function saveFitting(drawers: Drawers, request: SaveRequest, now: string): Promise<SaveOutcome> {
  const fitting = request.fitting.id === request.id ? request.fitting : { ...request.fitting, id: request.id };
  const text = fittingText(fitting);
  if (!isReadBack(fitting)) return notSaved("unwritable", "the fitting could not be read back from its own text");
  try {
    const outcome = await drawers.change((open) => saveInto(open, { ...request, fitting }, text, now));
    if (outcome.kind === "notSaved") return outcome;
    const written = sealedRecord({ ...outcome.entry, saveMark: request.mark, text });
    return (await lostInWriting(drawers, [written])) ?? outcome;
  } catch (thrown) {
    const { reason, message } = failureOf(thrown);
    return notSaved(reason, message);
  }
}

async function saveInto(open: DrawersToChange, request: SaveRequest, text: string, now: string): Promise<SaveOutcome> {
  const { id, baseRevision, mark, fitting, history } = request;
  const place = await clearedPlace(open, request, now);
  if (place.kind === "notSaved") return place;
  const before = place.kind === "ours" ? place.record : null;
  if (before?.saveMark === mark) return { kind: "saved", entry: entryOf(before), found: [] };
  const record = sealedRecord({
    id,
    title: fitting.title,
    changedAt: now,
    archived: before?.archived ?? false,
    // Whoever goes on in a fitting that another tab has removed wants it after all.
    deletedAt: null,
    revision: (before?.revision ?? baseRevision) + 1,
    saveMark: mark,
    text,
  });
  await rescueSteps(open, id, before, now);
  const texts = { past: history.past.map(fittingText), future: history.future.map(fittingText) };
  await (before === null ? writeNewRecord : writeRecord)(open, record);
  await open.write("histories", id, sealedHistory(text, texts, record.revision));
  return { kind: "saved", entry: entryOf(record), found: foundBySave(place, before, baseRevision) };
}

function foundBySave(place: Place, before: FittingRecord | null, baseRevision: number): readonly FoundBySave[] {
  if (place.kind === "quarantined") return ["quarantined"];
  if (place.kind === "empty" && baseRevision > 0) return ["recreated"];
  return before !== null && before.deletedAt !== null ? ["restored"] : [];
}

/** Steps to undo that cannot be read any more are about to be replaced; they go into quarantine first. */
async function rescueSteps(
  open: DrawersToChange,
  id: string,
  before: FittingRecord | null,
  now: string,
): Promise<void> {
  const steps = await open.read("histories", id);
  if (steps === undefined) return;
  const isReadable = before !== null && isHistoryOf(steps, before.text, before.revision);
  if (!isReadable) await layInQuarantine(open, "history", { key: id, value: steps }, now);
}

type Place =
  | { readonly kind: "empty" }
  | { readonly kind: "quarantined" }
  | { readonly kind: "ours"; readonly record: FittingRecord }
  | NotSaved;

/** Looks at what lies where the change should go, and makes room for it only where that loses nothing. */
async function clearedPlace(open: DrawersToChange, request: SaveRequest, now: string): Promise<Place> {
  const { id, baseRevision, mark, earlierMarks } = request;
  const found = await open.read("fittings", id);
  if (found === undefined) return { kind: "empty" };
  const reading = readRecord(id, found);
  if (reading.kind === "newer") return notSaved("newerRecord", "the record has a newer format");
  if (reading.kind === "damaged") {
    await layInQuarantine(open, "fitting", { key: id, value: found }, now);
    return { kind: "quarantined" };
  }
  const { record } = reading;
  if (record.revision === baseRevision || [mark, ...earlierMarks].includes(record.saveMark))
    return { kind: "ours", record };
  return readText(record.text).kind === "newer"
    ? notSaved("newerRecord", "the fitting has a newer version")
    : notSaved("changedElsewhere", `revision ${record.revision} lies there, the change was made on ${baseRevision}`);
}
