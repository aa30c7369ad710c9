import {
  type DrawerName,
  type Drawers,
  type DrawersToChange,
  type DrawersToRead,
  drawerNames,
  failureOf,
} from "./drawers";
import { isErasedNote, noteErased } from "./erasedFittings";
import { type NotSaved, type NotSavedReason, notSaved } from "./fittingOutcome";
import { entryOf, type FittingEntry, type FittingRecord, readRecord, sealedRecord } from "./fittingRecord";
import { clearRecord, writeRecord } from "./fittingSummary";
import { layInQuarantine } from "./quarantine";
import { leftInErasing, lostInWriting } from "./readBack";

/**
 * Changes to a fitting as a whole that leave its text alone: put away, removed (which can be undone), erased for good.
 * Putting away and removing do not count as a revision, so that they never get in the way of whoever is writing in it.
 */
export type ChangeOutcome = { readonly kind: "changed"; readonly entry: FittingEntry } | NotSaved;
export type EraseOutcome = { readonly kind: "erased" } | NotSaved;

export interface Marks {
  readonly archived?: boolean;
  readonly deletedAt?: string | null;
}

export async function markFitting(drawers: Drawers, id: string, marks: Marks): Promise<ChangeOutcome> {
  const written = await orNotSaved<Written>(drawers, async (open) => {
    const found = await open.read("fittings", id);
    const reading = found === undefined ? null : readRecord(id, found);
    if (reading?.kind !== "whole")
      return notSaved(refusals[reading?.kind ?? "missing"], `the record of ${id} is not whole`);
    const record = sealedRecord({ ...reading.record, ...marks });
    await writeRecord(open, record);
    return { kind: "written", record };
  });
  if (written.kind === "notSaved") return written;
  return (await lostInWriting(drawers, [written.record])) ?? { kind: "changed", entry: entryOf(written.record) };
}

type Written = { readonly kind: "written"; readonly record: FittingRecord } | NotSaved;

const refusals: { readonly [kind in "missing" | "newer" | "damaged"]: NotSavedReason } = {
  missing: "missing",
  newer: "newerRecord",
  damaged: "failed",
};

/** Takes a fitting and its steps away for good. One that cannot be read leaves a raw copy in quarantine. */
export async function eraseFitting(drawers: Drawers, id: string, now: string): Promise<EraseOutcome> {
  const outcome = await orNotSaved<EraseOutcome>(drawers, async (open) => {
    const found = await open.read("fittings", id);
    const isWhole = found === undefined || readRecord(id, found).kind === "whole";
    if (!isWhole) await layInQuarantine(open, "fitting", { key: id, value: found }, now);
    await clearRecord(open, id);
    await open.clear("histories", id);
    await noteErased(open, [id]);
    return { kind: "erased" };
  });
  return erasedIndeed(drawers, outcome, async (open) => (await open.read("fittings", id)) !== undefined);
}

/**
 * Forgets everything this tool ever kept on this device, quarantine and settings included. What stays is the note that it
 * was erased, so that nobody is told of a loss.
 */
export async function eraseEverything(drawers: Drawers): Promise<EraseOutcome> {
  const outcome = await orNotSaved<EraseOutcome>(drawers, async (open) => {
    await noteErased(open, await open.readKeys("fittings"));
    for (const drawer of drawerNames) await emptied(open, drawer);
    return { kind: "erased" };
  });
  return erasedIndeed(drawers, outcome, async (open) => (await open.readKeys("fittings")).length > 0);
}

export async function eraseQuarantined(drawers: Drawers, key: string): Promise<EraseOutcome> {
  const outcome = await orNotSaved<EraseOutcome>(drawers, async (open) => {
    await open.clear("quarantine", key);
    return { kind: "erased" };
  });
  return erasedIndeed(drawers, outcome, async (open) => (await open.read("quarantine", key)) !== undefined);
}

async function erasedIndeed(
  drawers: Drawers,
  outcome: EraseOutcome,
  isThere: (open: DrawersToRead) => Promise<boolean>,
): Promise<EraseOutcome> {
  if (outcome.kind === "notSaved") return outcome;
  return (await leftInErasing(drawers, isThere)) ?? outcome;
}

async function emptied(open: DrawersToChange, drawer: DrawerName): Promise<void> {
  for (const key of await open.readKeys(drawer)) {
    if (!isErasedNote(drawer, key)) await open.clear(drawer, key);
  }
}

/** Does the work, and turns a failure of the drawers into an outcome. */
export async function orNotSaved<Outcome>(
  drawers: Drawers,
  work: (open: DrawersToChange) => Promise<Outcome>,
): Promise<Outcome | NotSaved> {
  try {
    return await drawers.change(work);
  } catch (thrown) {
    const { reason, message } = failureOf(thrown);
    return notSaved(reason, message);
  }
}
