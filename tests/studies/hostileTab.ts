import { fittingStorage, type FittingStorage } from "../../src/app/storage/fittingStorage";
import type { FoundBySave } from "../../src/app/storage/fittingOutcome";
import { type ObjectStores, StorageFailure, type StoresToChange } from "../../src/app/storage/objectStores";
import { type Autosave, startAutosave } from "../../src/app/storage/autosave";
import { knownFittings } from "../../src/app/storage/knownFittings";
import type { OpenState } from "../../src/app/storage/openFitting";
import type { Locks } from "../../src/app/storage/writeLock";
import type { TabChannel } from "../../src/app/storage/tabChannel";
import { type FittingStore, fittingStore } from "../../src/app/session/store";
import { type FakeNotes, fakeNotes } from "../app/storage/fakeNotes";
import { fakeChannels, fakeLocks } from "../app/storage/fakeTabs";
import { type MemoryStores, memoryStores } from "../app/storage/memoryStores";
import { sampleFitting } from "../app/storage/sampleFittings";

/** One browser in memory, whose tabs share its stores, notes, locks and channels, and whose clock is set from outside. */
export interface HostileBrowser {
  readonly stores: MemoryStores;
  readonly notes: FakeNotes;
  readonly newTab: () => HostileTab;
  readonly setClock: (milliseconds: number) => void;
}

export interface HostileTab {
  readonly store: FittingStore;
  readonly autosave: Autosave;
  readonly storage: FittingStorage;
  readonly state: () => OpenState | null;
  /** What saves have found in place of what was kept, since this was asked last. */
  readonly found: () => readonly FoundBySave[];
  /** Ends every pause and every wait there is now. */
  readonly passTime: () => void;
  /** The tab dies: nothing of it runs on, what it was keeping is not kept, and its write locks are free. */
  readonly kill: () => void;
}

export function hostileBrowser(): HostileBrowser {
  const stores = memoryStores();
  const notes = fakeNotes();
  const locks = fakeLocks();
  const channels = fakeChannels();
  let clock = Date.UTC(2026, 0, 1);
  let ids = 0;
  const now = () => new Date(clock++).toISOString();
  const newId = () => `made-${String(++ids).padStart(6, "0")}`;
  return {
    stores,
    notes,
    newTab: () => newTab({ stores, notes, locks, channel: channels(), now, newId }),
    setClock: (milliseconds) => {
      clock = milliseconds;
    },
  };
}

interface TabParts {
  readonly stores: ObjectStores;
  readonly notes: FakeNotes;
  readonly locks: Locks;
  readonly channel: TabChannel;
  readonly now: () => string;
  readonly newId: () => string;
}

function newTab({ stores, notes, locks, channel, now, newId }: TabParts): HostileTab {
  const life = tabLife();
  const storage = fittingStorage(mortalStores(stores, life), {
    now,
    newId,
    known: knownFittings({ localStorage: notes }),
  });
  let timers: (() => void)[] = [];
  let state: OpenState | null = null;
  let found: FoundBySave[] = [];
  const store = fittingStore(sampleFitting);
  const later = (_milliseconds: number, work: () => void) => {
    timers.push(work);
    return () => {
      timers = timers.filter((one) => one !== work);
    };
  };
  const context = { storage, locks: mortalLocks(locks, life), channel, later, pauses: { letter: 350, change: 20 } };
  const autosave = startAutosave(store, context, {
    onState: (next) => {
      state = next;
    },
    onFirstSave: () => {},
    onHistoryLost: () => {},
    onFound: (what) => found.push(what),
  });
  return {
    store,
    autosave,
    storage,
    state: () => state,
    found: () => {
      const before = found;
      found = [];
      return before;
    },
    passTime: () => {
      for (const work of timers.splice(0)) work();
    },
    kill: () => {
      life.end();
      timers = [];
      channel.close();
    },
  };
}

interface TabLife {
  readonly isOver: () => boolean;
  readonly over: Promise<void>;
  readonly end: () => void;
}

function tabLife(): TabLife {
  let isOver = false;
  let tell: () => void = () => {};
  const over = new Promise<void>((resolve) => {
    tell = resolve;
  });
  const end = () => {
    isOver = true;
    tell();
  };
  return { isOver: () => isOver, over, end };
}

/** Work that was under way when its tab died is kept whole if it had come to its end, and else not at all. */
function mortalStores(stores: ObjectStores, { isOver }: TabLife): ObjectStores {
  const alive = (): void => {
    if (isOver()) throw new StorageFailure("lost", "the tab is dead");
  };
  const mortal = <Open extends object>(open: Open): Open =>
    new Proxy(open, {
      get: (target, name) => {
        const call = Reflect.get(target, name) as (...args: unknown[]) => Promise<unknown>;
        return async (...args: unknown[]) => {
          alive();
          return await call(...args);
        };
      },
    });
  const run = async <Done>(work: () => Promise<Done>): Promise<Done> => {
    alive();
    return await work();
  };
  return {
    look: (work) => run(() => stores.look((open) => work(mortal(open)))),
    change: <Done>(work: (open: StoresToChange) => Promise<Done>) =>
      run(() =>
        stores.change(async (open) => {
          const done = await work(mortal(open));
          alive();
          return done;
        }),
      ),
    close: () => {},
  };
}

/** A lock is free again the moment the tab that holds it dies; one that is waited for is not waited for any longer. */
function mortalLocks(locks: Locks, { over, isOver }: TabLife): Locks {
  const request = (name: string, options: LockOptions, work: LockGrantedCallback<unknown>): Promise<unknown> =>
    locks.request(name, options, (lock) => (isOver() ? undefined : Promise.race([work(lock), over])));
  return { request } as unknown as Locks;
}
