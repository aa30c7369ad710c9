import { type IDBPDatabase, type IDBPTransaction, openDB } from "idb";
import {
  type StoreName,
  type ObjectStores,
  StorageFailure,
  type StoresToChange,
  storeNames,
  type FailureReason,
} from "./objectStores";

/** The object stores in the browser's own database (IndexedDB). */
export interface IndexedStoresOptions {
  readonly name: string;
  /** A newer release, in another tab, is changing the database. This page has let go and must be loaded again. */
  readonly onOutdated: () => void;
  /** The connection is gone, as when the browser or somebody clears the data of this site. */
  readonly onDropped: () => void;
  /** How long one piece of work may take before it counts as slow, in milliseconds. */
  readonly patience?: number;
}

/** Raised only together with a new step in `upgrade`, and never lowered: older pages then stop, and say why. */
const databaseVersion = 2;

type Mode = "readonly" | "readwrite";
type Work<Done> = (open: StoresToChange) => Promise<Done>;

export function indexedStores(options: IndexedStoresOptions): ObjectStores {
  let connection: Promise<IDBPDatabase> | null = null;
  const forget = (): void => {
    connection = null;
  };
  const connected = (): Promise<IDBPDatabase> => {
    connection ??= openDatabase(options, forget);
    connection.catch(forget);
    return connection;
  };
  const close = async (): Promise<void> => {
    const closing = connection;
    forget();
    (await closing?.catch(() => null))?.close();
  };
  const attempt = async <Done>(mode: Mode, work: Work<Done>): Promise<Done> => {
    try {
      return await runOnce(await connected(), mode, work);
    } catch (thrown) {
      throw failureFrom(thrown);
    }
  };
  const run = <Done>(mode: Mode, work: Work<Done>): Promise<Done> => {
    const done = attempt(mode, work).catch(async (failure: StorageFailure) => {
      if (failure.reason !== "lost") throw failure;
      await close();
      return attempt(mode, work);
    });
    return withinTime(done, options.patience ?? 15_000);
  };
  return {
    look: (work) => run("readonly", work),
    change: (work) => run("readwrite", work),
    close: () => void close(),
  };
}

async function openDatabase(options: IndexedStoresOptions, forget: () => void): Promise<IDBPDatabase> {
  if (typeof indexedDB === "undefined") throw new StorageFailure("blocked", "this browser has no database for pages");
  const database = await openDB(options.name, databaseVersion, {
    upgrade(fresh) {
      for (const storeName of storeNames) {
        if (!fresh.objectStoreNames.contains(storeName)) fresh.createObjectStore(storeName);
      }
    },
    blocking(_current, wanted) {
      forget();
      database.close();
      if (wanted === null) options.onDropped();
      else options.onOutdated();
    },
    terminated() {
      forget();
      options.onDropped();
    },
  });
  return database;
}

/** The work, and the end of its transaction. A failure is told as the transaction tells it, if it does. */
async function runOnce<Done>(database: IDBPDatabase, mode: Mode, work: Work<Done>): Promise<Done> {
  const transaction = database.transaction(storeNames, mode, { durability: "strict" });
  transaction.done.catch(() => {});
  try {
    const done = await work(openedStores(transaction));
    await transaction.done;
    return done;
  } catch (thrown) {
    abortQuietly(transaction);
    await transaction.done.catch(() => {});
    throw transaction.error ?? thrown;
  }
}

type AnyTransaction = IDBPTransaction<unknown, StoreName[], Mode>;

function openedStores(transaction: AnyTransaction): StoresToChange {
  const store = (storeName: StoreName) => transaction.objectStore(storeName);
  return {
    read: (storeName, key) => store(storeName).get(key),
    readAll: async (storeName) => {
      const [keys, values] = await Promise.all([store(storeName).getAllKeys(), store(storeName).getAll()]);
      return keys.map((key, i) => ({ key: String(key), value: values[i] as unknown }));
    },
    readKeys: async (storeName) => (await store(storeName).getAllKeys()).map(String),
    write: async (storeName, key, value) => {
      await store(storeName).put?.(value, key);
    },
    clear: async (storeName, key) => {
      await store(storeName).delete?.(key);
    },
  };
}

/** The names are those of the DOMExceptions in the IndexedDB 3.0 recommendation; what they mean here is our reading. */
const reasonOfException: { readonly [name: string]: FailureReason } = {
  QuotaExceededError: "noRoom",
  SecurityError: "blocked",
  NotAllowedError: "blocked",
  VersionError: "newerApp",
  InvalidStateError: "lost",
  UnknownError: "lost",
  AbortError: "lost",
};

function failureFrom(thrown: unknown): StorageFailure {
  if (thrown instanceof StorageFailure) return thrown;
  const reason = thrown instanceof Error ? reasonOfException[thrown.name] : undefined;
  return new StorageFailure(reason ?? "failed", String(thrown));
}

function abortQuietly(transaction: AnyTransaction): void {
  try {
    transaction.abort();
  } catch {
    // It had already ended by itself; what it ended with is read from the transaction.
  }
}

function withinTime<Done>(work: Promise<Done>, patience: number): Promise<Done> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new StorageFailure("slow", `no answer in ${patience} ms`)), patience);
    work.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
