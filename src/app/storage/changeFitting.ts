import { type StoresToChange, storeNames } from "./objectStores";
import { isErasedNote, noteErased } from "./erasedFittings";
import { type ChangeOutcome, type NotSaved, notSaved } from "./fittingOutcome";
import { entryOf, readRecord, sealedRecord } from "./fittingRecord";
import { layInQuarantine } from "./quarantine";
import { writeRecord } from "./storedFitting";

export type EraseOutcome = { readonly kind: "erased" } | NotSaved;

export interface Marks {
  readonly archived?: boolean;
  readonly deletedAt?: string | null;
}

/** Puts a fitting away or removes it. No revision is counted, so it never gets in the way of whoever writes in it. */
export async function markFitting(open: StoresToChange, id: string, marks: Marks): Promise<ChangeOutcome> {
  const value = await open.read("fittings", id);
  if (value === undefined) return notSaved("missing", `there is no record of ${id}`);
  const reading = readRecord(id, value);
  if (reading.kind !== "whole")
    return notSaved(reading.kind === "newer" ? "newerRecord" : "failed", `the record of ${id} is ${reading.kind}`);
  const record = sealedRecord({ ...reading.record, ...marks });
  await writeRecord(open, record);
  return { kind: "changed", entry: entryOf(record) };
}

/** Takes a fitting and its steps away for good. One that cannot be read leaves a raw copy in quarantine. */
export async function eraseFitting(open: StoresToChange, id: string, now: string): Promise<EraseOutcome> {
  const value = await open.read("fittings", id);
  const isWhole = value === undefined || readRecord(id, value).kind === "whole";
  if (!isWhole) await layInQuarantine(open, "fitting", { key: id, value }, now);
  for (const storeName of ["fittings", "summaries", "histories"] as const) await open.clear(storeName, id);
  await noteErased(open, [id]);
  return { kind: "erased" };
}

/** Forgets everything on this device but the note that it was erased, so that nobody is told of a loss. */
export async function eraseEverything(open: StoresToChange): Promise<EraseOutcome> {
  await noteErased(open, await open.readKeys("fittings"));
  for (const storeName of storeNames) {
    for (const key of await open.readKeys(storeName)) {
      if (!isErasedNote(storeName, key)) await open.clear(storeName, key);
    }
  }
  return { kind: "erased" };
}
