import type { Fitting } from "../../document/fitting";
import { orNotSaved } from "./changeFitting";
import type { Drawers, DrawersToChange } from "./drawers";
import type { NotSaved } from "./fittingOutcome";
import { type FittingEntry, readRecord, sealedRecord } from "./fittingRecord";
import { fittingText } from "./fittingText";

/**
 * Adds fittings that come from a file, a link or a copy: all of them or none. Nothing that is already there is touched;
 * a fitting that is there already, word for word, is not added twice, and another state of it is laid beside it.
 */
export type AddedFitting =
  | { readonly kind: "added"; readonly id: string; readonly title: string }
  | { readonly kind: "alreadyHere"; readonly id: string; readonly title: string }
  /** There is another state of the same fitting under `besideId`; both are kept, and the person compares them. */
  | { readonly kind: "addedBeside"; readonly id: string; readonly title: string; readonly besideId: string };

export type AddOutcome = { readonly kind: "added"; readonly fittings: readonly AddedFitting[] } | NotSaved;

export interface AddTools {
  readonly now: string;
  readonly newId: () => string;
}

export async function addFittings(
  drawers: Drawers,
  fittings: readonly Fitting[],
  tools: AddTools,
): Promise<AddOutcome> {
  return orNotSaved<AddOutcome>(drawers, async (open) => {
    const added: AddedFitting[] = [];
    for (const fitting of fittings) added.push(await addFitting(open, fitting, tools));
    return { kind: "added", fittings: added };
  });
}

async function addFitting(open: DrawersToChange, fitting: Fitting, { now, newId }: AddTools): Promise<AddedFitting> {
  const { title } = fitting;
  const wantedId = fitting.id !== undefined && idForm.test(fitting.id) ? fitting.id : newId();
  const found = await open.read("fittings", wantedId);
  if (found === undefined) {
    await writeNew(open, { ...fitting, id: wantedId }, wantedId, now);
    return { kind: "added", id: wantedId, title };
  }
  const reading = readRecord(wantedId, found);
  const isSame = reading.kind === "whole" && reading.record.text === fittingText({ ...fitting, id: wantedId });
  if (isSame && reading.record.deletedAt === null) return { kind: "alreadyHere", id: wantedId, title };
  if (isSame) {
    await open.write("fittings", wantedId, sealedRecord({ ...reading.record, deletedAt: null }));
    return { kind: "added", id: wantedId, title };
  }
  const id = newId();
  await writeNew(open, { ...fitting, id }, id, now);
  return { kind: "addedBeside", id, title, besideId: wantedId };
}

/** What we give as an id ourselves. Anything else in a file gets a new one. */
const idForm = /^[A-Za-z0-9-]{8,64}$/;

async function writeNew(open: DrawersToChange, fitting: Fitting, id: string, now: string): Promise<void> {
  const entry: FittingEntry = {
    id,
    title: fitting.title,
    changedAt: now,
    archived: false,
    deletedAt: null,
    revision: 1,
  };
  await open.write("fittings", id, sealedRecord({ ...entry, saveMark: `added ${id}`, text: fittingText(fitting) }));
}
