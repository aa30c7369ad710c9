import { checkSum } from "./checkSum";
import type { DrawersToChange, KeptValue } from "./drawers";

/**
 * Where everything that could not be read is laid, exactly as it was found, before anything may take its place. The
 * person is told, can save the raw text as a file, and decides when it goes. The same find is laid down only once.
 */
export interface QuarantinedItem {
  readonly key: string;
  /** What it seemed to be. */
  readonly source: QuarantineSource;
  readonly takenAt: string;
  /** The raw find as text, for a file. */
  readonly rawText: string;
}

export const quarantineSources = ["fitting", "history", "settings"] as const;
export type QuarantineSource = (typeof quarantineSources)[number];

export async function layInQuarantine(
  open: DrawersToChange,
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
  const fields: { readonly [name: string]: unknown } = typeof value === "object" && value !== null ? { ...value } : {};
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
