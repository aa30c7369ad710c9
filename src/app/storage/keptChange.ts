import { type DrawerName, type Drawers, type DrawersToChange, type DrawersToRead, failureOf } from "./drawers";
import { type NotSaved, notSaved } from "./fittingOutcome";
import { type FittingRecord, readRecord } from "./fittingRecord";

/** Does a piece of work whole or not at all, and tells what came of it. */
export type Change = <Done>(work: (open: DrawersToChange) => Promise<Done>) => Promise<Done | NotSaved>;

/** What a place holds after the work; undefined where it was cleared. */
interface Place {
  readonly drawer: DrawerName;
  readonly key: string;
  readonly value: unknown;
}

/** The one way to change what is kept: before anybody is told that it was done, it is looked at again. */
export const keptChanges =
  (drawers: Drawers): Change =>
  async (work) => {
    const places = new Map<string, Place>();
    try {
      const done = await drawers.change((open) => {
        places.clear();
        return work(noting(open, (place) => places.set(`${place.drawer} ${place.key}`, place)));
      });
      // Where it cannot be looked at now, the word of the drawers stands: the change was flushed to the disk.
      const lost = await drawers.look((open) => lostAmong(open, [...places.values()])).catch(() => null);
      return lost === null ? done : notSaved("failed", `what lies under ${lost.key} is not what was left there`);
    } catch (thrown) {
      const { reason, message } = failureOf(thrown);
      return notSaved(reason, message);
    }
  };

const noting = (open: DrawersToChange, note: (place: Place) => void): DrawersToChange => ({
  ...open,
  write: (drawer, key, value) => {
    note({ drawer, key, value });
    return open.write(drawer, key, value);
  },
  clear: (drawer, key) => {
    note({ drawer, key, value: undefined });
    return open.clear(drawer, key);
  },
});

async function lostAmong(open: DrawersToRead, places: readonly Place[]): Promise<Place | null> {
  for (const place of places.filter(({ drawer }) => drawer === "fittings" || drawer === "quarantine")) {
    if (!isAsLeft(place, await open.read(place.drawer, place.key))) return place;
  }
  return null;
}

/** A later state is no loss: it is the work of another tab in between. */
function isAsLeft({ drawer, key, value }: Place, found: unknown): boolean {
  if (value === undefined || found === undefined || drawer === "quarantine")
    return (value === undefined) === (found === undefined);
  const reading = readRecord(key, found);
  if (reading.kind !== "whole") return reading.kind === "newer";
  const { revision, check } = value as FittingRecord;
  return reading.record.revision > revision || reading.record.check === check;
}
