import { type StoreName, type ObjectStores, type StoresToChange, type StoresToRead, failureOf } from "./objectStores";
import { type NotSaved, notSaved } from "./fittingOutcome";
import { type FittingRecord, readRecord } from "./fittingRecord";

/** Does a piece of work whole or not at all, and tells what came of it. */
export type Change = <Done>(work: (open: StoresToChange) => Promise<Done>) => Promise<Done | NotSaved>;

/** What a place holds after the work; undefined where it was cleared. */
interface Place {
  readonly storeName: StoreName;
  readonly key: string;
  readonly value: unknown;
}

/** The one way to change what is kept: before anybody is told that it was done, it is looked at again. */
export const keptChanges =
  (stores: ObjectStores): Change =>
  async (work) => {
    const places = new Map<string, Place>();
    try {
      const done = await stores.change((open) => {
        places.clear();
        return work(noting(open, (place) => places.set(`${place.storeName} ${place.key}`, place)));
      });
      // Where it cannot be looked at now, the word of the stores stands: the change was flushed to the disk.
      const lost = await stores.look((open) => lostAmong(open, [...places.values()])).catch(() => null);
      return lost === null ? done : notSaved("failed", `what lies under ${lost.key} is not what was left there`);
    } catch (thrown) {
      const { reason, message } = failureOf(thrown);
      return notSaved(reason, message);
    }
  };

const noting = (open: StoresToChange, note: (place: Place) => void): StoresToChange => ({
  ...open,
  write: (storeName, key, value) => {
    note({ storeName, key, value });
    return open.write(storeName, key, value);
  },
  clear: (storeName, key) => {
    note({ storeName, key, value: undefined });
    return open.clear(storeName, key);
  },
});

async function lostAmong(open: StoresToRead, places: readonly Place[]): Promise<Place | null> {
  for (const place of places.filter(({ storeName }) => storeName === "fittings" || storeName === "quarantine")) {
    if (!isAsLeft(place, await open.read(place.storeName, place.key))) return place;
  }
  return null;
}

/** A later state is no loss: it is the work of another tab in between. */
function isAsLeft({ storeName, key, value }: Place, found: unknown): boolean {
  if (value === undefined || found === undefined || storeName === "quarantine")
    return (value === undefined) === (found === undefined);
  const reading = readRecord(key, found);
  if (reading.kind !== "whole") return reading.kind === "newer";
  const { revision, check } = value as FittingRecord;
  return reading.record.revision > revision || reading.record.check === check;
}
