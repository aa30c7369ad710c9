import type { Fitting } from "../../document/fitting";
import type { StoresToChange } from "./objectStores";
import { type NotSaved, notSaved } from "./fittingOutcome";
import { readRecord, sealedRecord } from "./fittingRecord";
import { fittingText, isReadBack } from "./fittingText";
import type { Change } from "./keptChange";
import { writeNewRecord, writeRecord } from "./storedFitting";

/** What became of a fitting that came from a file, a link or a copy. */
export type AddedFitting =
  | { readonly kind: "added"; readonly id: string; readonly title: string }
  /** It was there already, word for word, whatever its id. */
  | { readonly kind: "alreadyHere"; readonly id: string; readonly title: string }
  /** There is another state of the same fitting under `besideId`; both are kept, and the person compares them. */
  | { readonly kind: "addedBeside"; readonly id: string; readonly title: string; readonly besideId: string };

export type AddOutcome = { readonly kind: "added"; readonly fittings: readonly AddedFitting[] } | NotSaved;

export interface AddTools {
  readonly now: string;
  readonly newId: () => string;
}

/** Adds all of these fittings or none; nothing that is already there is touched. */
export async function addFittings(change: Change, fittings: readonly Fitting[], tools: AddTools): Promise<AddOutcome> {
  const unwritable = fittings.find((fitting) => !isReadBack({ ...fitting, id: longestId }));
  if (unwritable !== undefined) return notSaved("unwritable", "a fitting could not be read back from its own text");
  return change(async (open) => {
    const contents = new Contents(open);
    const added: AddedFitting[] = [];
    for (const fitting of fittings) added.push(await addFitting(open, contents, fitting, tools));
    return { kind: "added", fittings: added };
  });
}

async function addFitting(
  open: StoresToChange,
  contents: Contents,
  fitting: Fitting,
  { now, newId }: AddTools,
): Promise<AddedFitting> {
  const { title } = fitting;
  const addNew = async (id: string): Promise<void> => {
    const text = fittingText({ ...fitting, id });
    const entry = { id, title, changedAt: now, archived: false, deletedAt: null, revision: 1 };
    await writeNewRecord(open, sealedRecord({ ...entry, saveMark: `added ${id}`, text }));
    contents.note(fitting, id);
  };
  const ownId = fitting.id !== undefined && idForm.test(fitting.id) ? fitting.id : null;
  const found = ownId === null ? undefined : await open.read("fittings", ownId);
  if (ownId !== null && found === undefined) {
    await addNew(ownId);
    return { kind: "added", id: ownId, title };
  }
  const reading = ownId === null ? null : readRecord(ownId, found);
  if (reading?.kind === "whole" && reading.record.text === fittingText(fitting)) {
    const { id, deletedAt } = reading.record;
    if (deletedAt === null) return { kind: "alreadyHere", id, title };
    await writeRecord(open, sealedRecord({ ...reading.record, deletedAt: null }));
    return { kind: "added", id, title };
  }
  const here = await contents.idOf(fitting);
  if (here !== undefined) return { kind: "alreadyHere", id: here, title };
  const id = newId();
  await addNew(id);
  return ownId === null ? { kind: "added", id, title } : { kind: "addedBeside", id, title, besideId: ownId };
}

/** What is there and was not removed, by its text without the id. Read only where an id does not tell. */
class Contents {
  private readonly open: StoresToChange;
  private ids: Map<string, string> | null = null;

  constructor(open: StoresToChange) {
    this.open = open;
  }

  note(fitting: Fitting, id: string): void {
    this.ids?.set(contentOf(fitting), id);
  }

  async idOf(fitting: Fitting): Promise<string | undefined> {
    this.ids ??= new Map(
      (await this.open.readAll("fittings")).flatMap(({ key, value }) => {
        const reading = readRecord(key, value);
        if (reading.kind !== "whole" || reading.record.deletedAt !== null) return [];
        return [[reading.record.text.replace(`"id":${JSON.stringify(key)}`, '"id":""'), key] as const];
      }),
    );
    return this.ids.get(contentOf(fitting));
  }
}

/** What we give as an id ourselves. Anything else in a file gets a new one. */
const idForm = /^[A-Za-z0-9-]{8,64}$/;
const longestId = "x".repeat(64);

const contentOf = (fitting: Fitting): string => fittingText({ ...fitting, id: "" });
