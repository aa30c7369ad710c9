import { type Drawers, type DrawersToChange, type DrawersToRead, failureOf } from "./drawers";
import { type NotSaved, notSaved } from "./fittingOutcome";
import { type FittingRecord, readRecord } from "./fittingRecord";

/** Does a piece of work whole or not at all, and tells what came of it. */
export type Change = <Done>(work: (open: DrawersToChange) => Promise<Done>) => Promise<Done | NotSaved>;

/** What became of a place: a value, or undefined where it was cleared. */
interface Wanted {
  readonly drawer: "fittings" | "quarantine";
  readonly key: string;
  readonly value: unknown;
}

/**
 * The one way to change what is kept. Before anybody is told that it was done, the fittings it wrote and what it cleared
 * are looked at again.
 */
export const keptChanges =
  (drawers: Drawers): Change =>
  async (work) => {
    const wanted = new Map<string, Wanted>();
    try {
      const done = await drawers.change((open) => {
        wanted.clear();
        return work(noting(open, wanted));
      });
      // Where it cannot be looked at now, the word of the drawers stands: the change was flushed to the disk.
      const fault = await drawers.look((open) => faultAmong(open, [...wanted.values()])).catch(() => null);
      return fault === null ? done : notSaved("failed", fault);
    } catch (thrown) {
      const { reason, message } = failureOf(thrown);
      return notSaved(reason, message);
    }
  };

function noting(open: DrawersToChange, wanted: Map<string, Wanted>): DrawersToChange {
  const note = (drawer: string, key: string, value: unknown): void => {
    if (drawer === "fittings" || drawer === "quarantine") wanted.set(`${drawer} ${key}`, { drawer, key, value });
  };
  return {
    ...open,
    write: (drawer, key, value) => {
      note(drawer, key, value);
      return open.write(drawer, key, value);
    },
    clear: (drawer, key) => {
      note(drawer, key, undefined);
      return open.clear(drawer, key);
    },
  };
}

async function faultAmong(open: DrawersToRead, wanted: readonly Wanted[]): Promise<string | null> {
  for (const place of wanted) {
    const found = await open.read(place.drawer, place.key);
    if (place.value === undefined && found !== undefined) return "what was deleted is still there";
    if (place.value !== undefined && !isAsWritten(place, found)) return `${place.key} is not what was written there`;
  }
  return null;
}

/** A later state is no loss: it is the work of another tab in between. */
function isAsWritten({ drawer, key, value }: Wanted, found: unknown): boolean {
  if (drawer === "quarantine") return found !== undefined;
  const reading = readRecord(key, found);
  if (reading.kind !== "whole") return reading.kind === "newer";
  const { revision, check } = value as FittingRecord;
  return reading.record.revision > revision || reading.record.check === check;
}
