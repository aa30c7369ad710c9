import type { Fitting } from "../../document/fitting";
import { orNotSaved } from "./changeFitting";
import type { Drawers, DrawersToChange } from "./drawers";
import { type NotSaved, notSaved } from "./fittingOutcome";
import { type FittingRecord, readRecord, sealedRecord } from "./fittingRecord";
import { writeNewRecord, writeRecord } from "./fittingSummary";
import { fittingText, isReadBack } from "./fittingText";
import { lostInWriting } from "./readBack";

/**
 * Adds fittings that come from a file, a link or a copy: all of them or none. Nothing that is already there is touched;
 * a fitting that is there already, word for word, is not added twice, whatever its id, and another state of it is laid
 * beside it. What could not be read again is not added, and added is said of what has been read again.
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
  { now, newId }: AddTools,
): Promise<AddOutcome> {
  const unwritable = fittings.find((fitting) => !isReadBack({ ...fitting, id: longestId }));
  if (unwritable !== undefined) return notSaved("unwritable", "a fitting could not be read back from its own text");
  const done = await orNotSaved<Additions | NotSaved>(drawers, async (open) => {
    const adding = new Adding(open, now, newId);
    for (const fitting of fittings) await adding.add(fitting);
    return { kind: "additions", fittings: adding.fittings, written: adding.written };
  });
  if (done.kind === "notSaved") return done;
  return (await lostInWriting(drawers, done.written)) ?? { kind: "added", fittings: done.fittings };
}

interface Additions {
  readonly kind: "additions";
  readonly fittings: readonly AddedFitting[];
  readonly written: readonly FittingRecord[];
}

/** One work of adding, within one opening of the drawers. */
class Adding {
  readonly fittings: AddedFitting[] = [];
  readonly written: FittingRecord[] = [];
  private readonly open: DrawersToChange;
  private readonly now: string;
  private readonly newId: () => string;
  private idsByContent: Map<string, string> | null = null;

  constructor(open: DrawersToChange, now: string, newId: () => string) {
    this.open = open;
    this.now = now;
    this.newId = newId;
  }

  async add(fitting: Fitting): Promise<void> {
    const { title } = fitting;
    const ownId = fitting.id !== undefined && idForm.test(fitting.id) ? fitting.id : null;
    const found = ownId === null ? undefined : await this.open.read("fittings", ownId);
    if (ownId !== null && found === undefined) return this.addNew(fitting, ownId);
    const reading = ownId === null ? null : readRecord(ownId, found);
    if (reading?.kind === "whole" && reading.record.text === fittingText({ ...fitting, id: reading.record.id }))
      return this.putBack(reading.record, title);
    const here = (await this.contents()).get(contentOf(fitting));
    if (here !== undefined) this.fittings.push({ kind: "alreadyHere", id: here, title });
    else await this.addNew(fitting, this.newId(), ownId);
  }

  private async addNew(fitting: Fitting, id: string, besideId: string | null = null): Promise<void> {
    const { title } = fitting;
    const text = fittingText({ ...fitting, id });
    const entry = { id, title, changedAt: this.now, archived: false, deletedAt: null, revision: 1 };
    const record = sealedRecord({ ...entry, saveMark: `added ${id}`, text });
    await writeNewRecord(this.open, record);
    this.written.push(record);
    this.idsByContent?.set(contentOf(fitting), id);
    this.fittings.push(besideId === null ? { kind: "added", id, title } : { kind: "addedBeside", id, title, besideId });
  }

  /** The same under the same id: nothing to do, unless it had been removed. */
  private async putBack(record: FittingRecord, title: string): Promise<void> {
    const { id, deletedAt } = record;
    if (deletedAt !== null) {
      const restored = sealedRecord({ ...record, deletedAt: null });
      await writeRecord(this.open, restored);
      this.written.push(restored);
    }
    this.fittings.push({ kind: deletedAt === null ? "alreadyHere" : "added", id, title });
  }

  /** What lies there and was not removed, by its text without the id. Asked for only where an id does not tell. */
  private async contents(): Promise<Map<string, string>> {
    this.idsByContent ??= new Map(
      (await this.open.readAll("fittings")).flatMap(({ key, value }) => {
        const reading = readRecord(key, value);
        if (reading.kind !== "whole" || reading.record.deletedAt !== null) return [];
        return [[withoutId(reading.record.text, key), key] as const];
      }),
    );
    return this.idsByContent;
  }
}

/** What we give as an id ourselves. Anything else in a file gets a new one. */
const idForm = /^[A-Za-z0-9-]{8,64}$/;
const longestId = "x".repeat(64);

const contentOf = (fitting: Fitting): string => fittingText({ ...fitting, id: "" });

/** The text of a kept fitting as it would be without its id, to compare it with others. */
const withoutId = (text: string, id: string): string => text.replace(`"id":${JSON.stringify(id)}`, '"id":""');
