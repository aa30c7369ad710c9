import type { Fitting } from "../../document/fitting";
import type { FittingProblem } from "../../document/fittingProblem";
import type { StoresToChange } from "./objectStores";
import { noteThereAgain } from "./erasedFittings";
import { type FittingRecord, readRecord, summaryOf } from "./fittingRecord";
import { readText } from "./fittingText";
import { rawText } from "./quarantine";

/** What lies in the store of fittings under an id, with what it says. */
export type StoredFitting =
  | { readonly kind: "fitting"; readonly record: FittingRecord; readonly fitting: Fitting }
  | { readonly kind: "newer"; readonly id: string; readonly asUnderstood: Fitting | null; readonly rawText: string }
  | {
      readonly kind: "unreadable";
      readonly id: string;
      readonly problems: readonly FittingProblem[];
      readonly rawText: string;
    };

export function readStored(id: string, value: unknown): StoredFitting {
  const reading = readRecord(id, value);
  if (reading.kind === "newer") return { kind: "newer", id, asUnderstood: null, rawText: rawText(value) };
  if (reading.kind === "damaged") return { kind: "unreadable", id, problems: [], rawText: rawText(value) };
  const { record } = reading;
  const read = readText(record.text);
  if (read.kind === "read") return { kind: "fitting", record, fitting: read.fitting };
  if (read.kind === "newer") return { ...read, id, rawText: record.text };
  return { ...read, id, rawText: rawText(value) };
}

/** The one way to write a fitting: its record, and the summary of it in the same step. */
export async function writeRecord(open: StoresToChange, record: FittingRecord): Promise<void> {
  await open.write("fittings", record.id, record);
  await open.write("summaries", record.id, summaryOf(record));
}

/** The same for one that was not there, or not any more. */
export async function writeNewRecord(open: StoresToChange, record: FittingRecord): Promise<void> {
  await noteThereAgain(open, record.id);
  await writeRecord(open, record);
}
