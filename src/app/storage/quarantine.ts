import { checkSum } from "./checkSum";
import type { StoresToChange, KeptValue } from "./objectStores";
import { fieldsOf } from "./fields";

/** Something that could not be read, kept exactly as it was found until the person lets it go. */
export interface QuarantinedItem {
  readonly key: string;
  /** What it seemed to be. */
  readonly source: QuarantineSource;
  readonly takenAt: string;
  /** The raw find as text, for a file. */
  readonly rawText: string;
}

const quarantineSources = ["fitting", "history", "settings"] as const;
export type QuarantineSource = (typeof quarantineSources)[number];

/** Lays a raw copy down; the same find is laid down only once. */
export async function layInQuarantine(
  open: StoresToChange,
  source: QuarantineSource,
  found: KeptValue,
  takenAt: string,
): Promise<void> {
  const key = `${source} ${found.key} ${checkSum(rawText(found.value))}`;
  if ((await open.read("quarantine", key)) !== undefined) return;
  await open.write("quarantine", key, { source, takenAt, key: found.key, raw: found.value });
}

/** Never fails: an item that is itself damaged is listed with whatever text it still gives. */
export function quarantinedItem({ key, value }: KeptValue): QuarantinedItem {
  const fields = fieldsOf(value);
  const source = quarantineSources.find((name) => name === fields.source) ?? "fitting";
  const takenAt = typeof fields.takenAt === "string" ? fields.takenAt : "";
  return { key, source, takenAt, rawText: rawText("raw" in fields ? fields.raw : value) };
}

/** Anything a database can hold, as text. What JSON cannot say is at least named. */
export function rawText(value: unknown): string {
  if (typeof value === "string") return value;
  try {
    return JSON.stringify(value, null, 2) ?? String(value);
  } catch {
    return String(value);
  }
}
