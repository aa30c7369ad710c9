import type { WorkEntry } from "../../document/fitting";
import type { Step } from "./step";
import { type RecordFrom, stepRecord } from "./stepRecord";

/**
 * What goes into the log once a step is done at that moment: its record, with what was read or counted in the place of what
 * stood open. What was not taken is left out of it.
 */
export function workEntry(step: Step, from: RecordFrom, at: string, taken: object = {}): WorkEntry | null {
  const record = stepRecord(step, from);
  if (record === null) return null;
  const { before: _before, after: _after, readings: _readings, ...rest } = record;
  const open = record.readings === undefined ? {} : { readings: {} };
  // The record of a step is an entry by its contract; only its type is wider.
  return { ...rest, ...open, ...taken, at } as unknown as WorkEntry;
}
