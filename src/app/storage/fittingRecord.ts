import { checkSum } from "./checkSum";
import { fieldsOf } from "./fields";

/** What a list needs to know of a fitting without reading it. */
export interface FittingEntry {
  readonly id: string;
  readonly title: string;
  /** When its text last changed, as an ISO 8601 instant in UTC. */
  readonly changedAt: string;
  readonly archived: boolean;
  /** When it was removed, or null. A removed fitting stays whole until it is erased. */
  readonly deletedAt: string | null;
  /** Goes up by one with every saved change: the last wall between two tabs. */
  readonly revision: number;
}

/** One fitting as it lies in its store. */
export interface FittingRecord extends FittingEntry {
  readonly format: number;
  /** Names the save that wrote it, so that a save tried twice recognizes itself. */
  readonly saveMark: string;
  /** The fitting file's own text. */
  readonly text: string;
  /** A check over all the rest. */
  readonly check: string;
}

const recordFormat = 1;

export type RecordReading =
  | { readonly kind: "whole"; readonly record: FittingRecord }
  | { readonly kind: "newer" }
  | { readonly kind: "damaged" };

export function sealedRecord(fields: Omit<FittingRecord, "format" | "check">): FittingRecord {
  return { ...fields, format: recordFormat, check: sealOf(fields, fields.saveMark, fields.text) };
}

/** Reads whatever lies in the store under a key. A whole record is exactly what was written, under its own key. */
export function readRecord(key: string, value: unknown): RecordReading {
  const { format, saveMark, text, check } = fieldsOf(value);
  if (typeof format === "number" && format > recordFormat) return { kind: "newer" };
  const entry = readEntry(key, value);
  if (entry === null || format !== recordFormat || typeof saveMark !== "string" || typeof text !== "string")
    return { kind: "damaged" };
  const record = sealedRecord({ ...entry, saveMark, text });
  return record.check === check ? { kind: "whole", record } : { kind: "damaged" };
}

/** The entry by itself, laid beside a record that can be read, so that a long list opens none of them. */
export function summaryOf(fields: FittingEntry): unknown {
  const entry = entryOf(fields);
  return { ...entry, format: recordFormat, check: sealOf(entry) };
}

/** The entry that a summary stands for; null where it is not exactly what was written. */
export function readSummary(key: string, value: unknown): FittingEntry | null {
  const entry = readEntry(key, value);
  const { format, check } = fieldsOf(value);
  return entry !== null && format === recordFormat && check === sealOf(entry) ? entry : null;
}

export function entryOf(fields: FittingEntry): FittingEntry {
  const { id, title, changedAt, archived, deletedAt, revision } = fields;
  return { id, title, changedAt, archived, deletedAt, revision };
}

function readEntry(key: string, value: unknown): FittingEntry | null {
  const { id, title, changedAt, archived, deletedAt, revision } = fieldsOf(value);
  const isWhole =
    id === key &&
    typeof title === "string" &&
    typeof changedAt === "string" &&
    typeof archived === "boolean" &&
    (deletedAt === null || typeof deletedAt === "string") &&
    Number.isSafeInteger(revision) &&
    Number(revision) >= 1;
  return isWhole ? { id: key, title, changedAt, archived, deletedAt, revision: Number(revision) } : null;
}

const sealOf = (entry: FittingEntry, ...others: readonly string[]): string =>
  checkSum(JSON.stringify([recordFormat, ...Object.values(entryOf(entry)), ...others]));
