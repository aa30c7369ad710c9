import {
  type StoreName,
  type ObjectStores,
  StorageFailure,
  type StoresToChange,
  storeNames,
  type FailureReason,
} from "../../../src/app/storage/objectStores";

/**
 * Object stores in memory that keep a change whole or not at all, as a database promises, and fail when told to.
 * Every opening, reading, writing and the final keeping counts as one call; `faultAt` sees each and may strike.
 */
export interface MemoryStores extends ObjectStores {
  /** What is kept, for looking at and for damaging. */
  readonly kept: Map<string, unknown>;
  /** How many calls have been made so far. */
  calls(): number;
  failFrom(faultAt: FaultAt): void;
}

export type CallName = "open" | "read" | "readAll" | "readKeys" | "write" | "clear" | "keep";
/**
 * before: the call fails and nothing of this work is kept. after: only for keep, which succeeds and is then reported as
 * failed, as when the connection breaks between the disk and the page.
 */
export type Fault = { readonly reason: FailureReason; readonly when: "before" | "after" };
export type FaultAt = (call: number, name: CallName) => Fault | null;

export const placeOf = (storeName: StoreName, key: string): string => `${storeName}/${key}`;

export function memoryStores(): MemoryStores {
  const kept = new Map<string, unknown>();
  let calls = 0;
  let faultAt: FaultAt = () => null;

  const call = async (name: CallName): Promise<Fault | null> => {
    await Promise.resolve();
    calls += 1;
    const fault = faultAt(calls, name);
    if (fault?.when === "before") throw new StorageFailure(fault.reason, `call ${calls} (${name}) failed on purpose`);
    return fault;
  };

  const opened = (changed: Map<string, unknown>): StoresToChange => ({
    read: async (storeName, key) => {
      await call("read");
      return structuredClone(changed.get(placeOf(storeName, key)));
    },
    readAll: async (storeName) => {
      await call("readAll");
      const inside = [...changed].filter(([place]) => place.startsWith(placeOf(storeName, "")));
      return inside.map(([place, value]) => ({
        key: place.slice(storeName.length + 1),
        value: structuredClone(value),
      }));
    },
    readKeys: async (storeName) => {
      await call("readKeys");
      const places = [...changed.keys()].filter((place) => place.startsWith(placeOf(storeName, "")));
      return places.map((place) => place.slice(storeName.length + 1));
    },
    write: async (storeName, key, value) => {
      await call("write");
      changed.set(placeOf(storeName, key), structuredClone(value));
    },
    clear: async (storeName, key) => {
      await call("clear");
      changed.delete(placeOf(storeName, key));
    },
  });

  const keep = (changed: ReadonlyMap<string, unknown>): void => {
    kept.clear();
    for (const [place, value] of changed) kept.set(place, value);
  };

  const run = async <Done>(work: (open: StoresToChange) => Promise<Done>, isChange: boolean): Promise<Done> => {
    await call("open");
    const changed = new Map(kept);
    const done = await work(opened(changed));
    const fault = await call("keep");
    if (isChange) keep(changed);
    if (fault) throw new StorageFailure(fault.reason, `call ${calls} (keep) was kept and then reported as failed`);
    return done;
  };

  return {
    kept,
    calls: () => calls,
    failFrom: (next) => {
      faultAt = next;
    },
    look: (work) => run(work, false),
    change: queued((work) => run(work, true)),
    close: () => {},
  };
}

/** One change after the other, as a database does with changes to the same stores. */
function queued(run: ObjectStores["change"]): ObjectStores["change"] {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const next = last.then(() => run(work));
    last = next.catch(() => {});
    return next;
  };
}

/** Every place and its value, as one text, to compare what is kept before and after. */
export const keptText = (stores: MemoryStores): string =>
  JSON.stringify(
    storeNames.map((storeName) => [...stores.kept].filter(([place]) => place.startsWith(placeOf(storeName, "")))),
  );
