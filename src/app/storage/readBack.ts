import type { Drawers, DrawersToRead } from "./drawers";
import { notSaved, type NotSaved } from "./fittingOutcome";
import { type FittingRecord, readRecord } from "./fittingRecord";

/**
 * Reads again what has just been kept, before anybody is told that it was: null where all of it lies there as it was
 * written, or a later state of it, since the work of another tab in between is no loss.
 */
export const lostInWriting = (drawers: Drawers, written: readonly FittingRecord[]): Promise<NotSaved | null> =>
  lookedAgain(drawers, async (open) => {
    for (const record of written) {
      const reading = readRecord(record.id, await open.read("fittings", record.id));
      const isThere = reading.kind === "newer" || (reading.kind === "whole" && isAsWritten(reading.record, record));
      if (!isThere) return `what lies under ${record.id} is not what was written there`;
    }
    return null;
  });

const isAsWritten = (found: FittingRecord, written: FittingRecord): boolean =>
  found.revision > written.revision || found.check === written.check;

/** Looks again whether what has just been cleared is gone: null where it is. */
export const leftInErasing = (
  drawers: Drawers,
  isThere: (open: DrawersToRead) => Promise<boolean>,
): Promise<NotSaved | null> =>
  lookedAgain(drawers, async (open) => ((await isThere(open)) ? "what was deleted is still there" : null));

/** Where it cannot be looked at now, the word of the drawers stands: the change was flushed to the disk. */
async function lookedAgain(
  drawers: Drawers,
  fault: (open: DrawersToRead) => Promise<string | null>,
): Promise<NotSaved | null> {
  const found = await drawers.look(fault).catch(() => null);
  return found === null ? null : notSaved("failed", found);
}
