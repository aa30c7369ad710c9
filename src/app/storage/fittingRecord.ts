import { checkSum } from "./checkSum";

/**
 * One fitting as it lies in its drawer: the fitting file's own text, what a list needs to know without reading it, and
 * a check over all of that. The revision goes up by one with every saved change and is the last wall between two tabs;
 * the save mark names the very save that wrote it, so that a save tried twice recognises itself.
 */
export interface FittingEntry {
  readonly id: string;
  readonly title: string;
  /** When its text last changed, as an ISO 8601 instant in UTC. */
  readonly changedAt: string;
  readonly archived: boolean;
  /** When it was removed, or null. A removed fitting stays whole until it is erased. */
  readonly deletedAt: string | null;
  readonly revision: number;
}

export interface FittingRecord extends FittingEntry {
  readonly format: typeof recordFormat;
  readonly saveMark: string;
  readonly text: string;
  readonly check: string;
}

export const recordFormat = 1;

export type RecordReading =
  | { readonly kind: "whole"; readonly record: FittingRecord }
  | { readonly kind: "newer" }
  | { readonly kind: "damaged" };

export function sealedRecord(fields: Omit<FittingRecord, "format" | "check">): FittingRecord {
  return { ...fields, format: recordFormat, check: checkSum(sealedText(fields)) };
}

/** Reads whatever lies in the drawer under a key. A whole record is exactly what was written, under its own key. */
export function readRecord(key: string, value: unknown): RecordReading {
  if (!isObject(value)) return { kind: "damaged" };
  if (typeof value.format === "number" && value.format > recordFormat) return { kind: "newer" };
  const entry = readEntry(key, value);
  const { format, saveMark, text, check } = value;
  if (entry === null || format !== recordFormat || !isText(saveMark) || !isText(text)) return { kind: "damaged" };
  const fields = { ...entry, saveMark, text };
  return checkSum(sealedText(fields)) === check
    ? { kind: "whole", record: { ...fields, format, check } }
    : { kind: "damaged" };
}

/** The fields of an entry, where whatever was found under a key has all of them. */
export function readEntry(key: string, value: unknown): FittingEntry | null {
  if (!isObject(value)) return null;
  const { id, title, changedAt, archived, deletedAt, revision } = value;
  const isWhole =
    id === key &&
    isText(title) &&
    isText(changedAt) &&
    typeof archived === "boolean" &&
    (deletedAt === null || isText(deletedAt)) &&
    isRevision(revision);
  return isWhole ? { id, title, changedAt, archived, deletedAt, revision } : null;
}

export const entryOf = ({ id, title, changedAt, archived, deletedAt, revision }: FittingEntry): FittingEntry => ({
  id,
  title,
  changedAt,
  archived,
  deletedAt,
  revision,
});

const sealedText = (fields: Omit<FittingRecord, "format" | "check">): string =>
  JSON.stringify([
    recordFormat,
    fields.id,
    fields.title,
    fields.changedAt,
    fields.archived,
    fields.deletedAt,
    fields.revision,
    fields.saveMark,
    fields.text,
  ]);

const isObject = (value: unknown): value is { readonly [name: string]: unknown } =>
  typeof value === "object" && value !== null;
const isText = (value: unknown): value is string => typeof value === "string";
const isRevision = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) >= 1;
