/**
 * The port to whatever keeps things: a few named stores of values under text keys, opened for one piece of work that is
 * kept whole or not at all. The browser's database is one such place; tests use one that fails on purpose.
 */
export const storeNames = ["fittings", "histories", "quarantine", "settings", "summaries"] as const;
export type StoreName = (typeof storeNames)[number];

export interface KeptValue {
  readonly key: string;
  readonly value: unknown;
}

/** A value that was never kept reads as undefined. */
export interface StoresToRead {
  read(storeName: StoreName, key: string): Promise<unknown>;
  readAll(storeName: StoreName): Promise<readonly KeptValue[]>;
  readKeys(storeName: StoreName): Promise<readonly string[]>;
}

export interface StoresToChange extends StoresToRead {
  write(storeName: StoreName, key: string, value: unknown): Promise<void>;
  clear(storeName: StoreName, key: string): Promise<void>;
}

/**
 * Both promises resolve after the work was kept to the end (a change: flushed to the disk), and reject with a
 * `DrawersFailure`. A change that rejects has normally kept nothing; after a lost connection nobody can know, so whoever
 * tries again must recognize work that was kept after all.
 */
export interface ObjectStores {
  look<Found>(work: (open: StoresToRead) => Promise<Found>): Promise<Found>;
  change<Done>(work: (open: StoresToChange) => Promise<Done>): Promise<Done>;
  close(): void;
}

/**
 * noRoom: the device or the browser's share of it is full. blocked: the browser does not let this page keep anything.
 * newerApp: a newer release owns the stores. lost: the connection was dropped, and a new one failed as well. slow: no
 * answer in the time a person would wait. failed: anything else.
 */
export const failureReasons = ["noRoom", "blocked", "newerApp", "lost", "slow", "failed"] as const;
export type FailureReason = (typeof failureReasons)[number];

export class StorageFailure extends Error {
  readonly reason: FailureReason;

  constructor(reason: FailureReason, detail: string) {
    super(detail);
    this.name = "DrawersFailure";
    this.reason = reason;
  }
}

export const failureOf = (thrown: unknown): StorageFailure =>
  thrown instanceof StorageFailure ? thrown : new StorageFailure("failed", String(thrown));
