import { checkSum } from "./checkSum";
import type { DrawersToChange } from "./drawers";
import { noteThereAgain } from "./erasedFittings";
import { entryOf, type FittingEntry, type FittingRecord, readEntry } from "./fittingRecord";

/**
 * What the list shows of a fitting, laid beside its record so that a long list opens none of them. A summary is written
 * in the step that writes its record, and only ever stands for one that can be read; where it is missing or damaged the
 * record itself is read, and a new one laid down.
 */
export interface FittingSummary extends FittingEntry {
  readonly format: typeof summaryFormat;
  readonly check: string;
}

const summaryFormat = 1;

/** Lays a record down with its summary: the one way to write a fitting. */
export async function writeRecord(open: DrawersToChange, record: FittingRecord): Promise<void> {
  await open.write("fittings", record.id, record);
  await writeSummary(open, record);
}

/** The same for one that was not there, or not any more. */
export async function writeNewRecord(open: DrawersToChange, record: FittingRecord): Promise<void> {
  await noteThereAgain(open, record.id);
  await writeRecord(open, record);
}

export async function writeSummary(open: DrawersToChange, entry: FittingEntry): Promise<void> {
  const fields = entryOf(entry);
  await open.write("summaries", entry.id, { ...fields, format: summaryFormat, check: sealOf(fields) });
}

export async function clearRecord(open: DrawersToChange, id: string): Promise<void> {
  await open.clear("fittings", id);
  await open.clear("summaries", id);
}

/** The entry that a summary under this key stands for; null where it is not exactly what was written. */
export function summaryEntry(key: string, value: unknown): FittingEntry | null {
  const fields = readEntry(key, value);
  if (fields === null) return null;
  const { format, check } = value as Partial<FittingSummary>;
  return format === summaryFormat && check === sealOf(fields) ? fields : null;
}

const sealOf = ({ id, title, changedAt, archived, deletedAt, revision }: FittingEntry): string =>
  checkSum(JSON.stringify([summaryFormat, id, title, changedAt, archived, deletedAt, revision]));
