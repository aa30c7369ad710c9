import type { Fitting } from "../../document/fitting";
import type { StoresToChange } from "./objectStores";
import { type FittingHistory, type FoundBySave, notSaved, type NotSaved, type SaveOutcome } from "./fittingOutcome";
import { entryOf, type FittingRecord, readRecord, sealedRecord } from "./fittingRecord";
import { fittingText, isReadBack, readText } from "./fittingText";
import { isHistoryOf, sealedHistory } from "./historyRecord";
import type { Change } from "./keptChange";
import { layInQuarantine } from "./quarantine";
import { writeNewRecord, writeRecord } from "./storedFitting";

/** One change to be kept, and what its writer takes to lie in the store now. */
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

/** Keeps one change whole or not at all: the fitting and its steps to undo in one step. */
export async function saveFitting(change: Change, request: SaveRequest, now: string): Promise<SaveOutcome> {
  const { id } = request;
  const fitting = request.fitting.id === id ? request.fitting : { ...request.fitting, id };
  if (!isReadBack(fitting)) return notSaved("unwritable", "the fitting could not be read back from its own text");
  return change((open) => saveInto(open, { ...request, fitting }, now));
}

async function saveInto(open: StoresToChange, request: SaveRequest, now: string): Promise<SaveOutcome> {
  const { id, baseRevision, mark, fitting, history } = request;
  const place = await clearedPlace(open, request, now);
  if (place.kind === "notSaved") return place;
  const { before } = place;
  if (before?.saveMark === mark) return { kind: "saved", entry: entryOf(before), found: [] };
  const text = fittingText(fitting);
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
  await (before === null ? writeNewRecord : writeRecord)(open, record);
  const texts = { past: history.past.map(fittingText), future: history.future.map(fittingText) };
  await open.write("histories", id, sealedHistory(text, texts, record.revision));
  return { kind: "saved", entry: entryOf(record), found: place.found };
}

/** Steps to undo that cannot be read any more are about to be replaced; they go into quarantine first. */
async function rescueSteps(open: StoresToChange, key: string, before: FittingRecord | null, now: string) {
  const value = await open.read("histories", key);
  const isReadable = value === undefined || (before !== null && isHistoryOf(value, before.text, before.revision));
  if (!isReadable) await layInQuarantine(open, "history", { key, value }, now);
}

/** Room for a change, and what was there before of this writer's. */
interface Place {
  readonly kind: "place";
  readonly before: FittingRecord | null;
  readonly found: readonly FoundBySave[];
}

/** Makes room for the change only where that loses nothing. */
async function clearedPlace(open: StoresToChange, request: SaveRequest, now: string): Promise<Place | NotSaved> {
  const { id, baseRevision, mark, earlierMarks } = request;
  const value = await open.read("fittings", id);
  if (value === undefined) return { kind: "place", before: null, found: baseRevision > 0 ? ["recreated"] : [] };
  const reading = readRecord(id, value);
  if (reading.kind === "newer") return notSaved("newerRecord", "the record has a newer format");
  if (reading.kind === "damaged") {
    await layInQuarantine(open, "fitting", { key: id, value }, now);
    return { kind: "place", before: null, found: ["quarantined"] };
  }
  const { record } = reading;
  if (record.revision === baseRevision || [mark, ...earlierMarks].includes(record.saveMark))
    return { kind: "place", before: record, found: record.deletedAt === null ? [] : ["restored"] };
  return readText(record.text).kind === "newer"
    ? notSaved("newerRecord", "the fitting has a newer version")
    : notSaved("changedElsewhere", `revision ${record.revision} lies there, the change was made on ${baseRevision}`);
}
