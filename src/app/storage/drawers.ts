/**
 * The port to whatever keeps things: a few named drawers of values under text keys, opened for one piece of work that is
 * kept whole or not at all. The browser's database is one such chest; tests use one that fails on purpose.
 */
export const drawerNames = ["fittings", "histories", "quarantine", "settings", "summaries"] as const;
export type DrawerName = (typeof drawerNames)[number];

export interface KeptValue {
  readonly key: string;
  readonly value: unknown;
}

/** A value that was never kept reads as undefined. */
export interface DrawersToRead {
  read(drawer: DrawerName, key: string): Promise<unknown>;
  readAll(drawer: DrawerName): Promise<readonly KeptValue[]>;
  readKeys(drawer: DrawerName): Promise<readonly string[]>;
}

export interface DrawersToChange extends DrawersToRead {
  write(drawer: DrawerName, key: string, value: unknown): Promise<void>;
  clear(drawer: DrawerName, key: string): Promise<void>;
}

/**
 * Both promises resolve after the work was kept to the end (a change: flushed to the disk), and reject with a
 * `DrawersFailure`. A change that rejects has normally kept nothing; after a lost connection nobody can know, so whoever
 * tries again must recognize work that was kept after all.
 */
export interface Drawers {
  look<Found>(work: (open: DrawersToRead) => Promise<Found>): Promise<Found>;
  change<Done>(work: (open: DrawersToChange) => Promise<Done>): Promise<Done>;
  close(): void;
}

/**
 * noRoom: the device or the browser's share of it is full. blocked: the browser does not let this page keep anything.
 * newerApp: a newer release owns the drawers. lost: the connection was dropped, and a new one failed as well. slow: no
 * answer in the time a person would wait. failed: anything else.
 */
export const failureReasons = ["noRoom", "blocked", "newerApp", "lost", "slow", "failed"] as const;
export type FailureReason = (typeof failureReasons)[number];

export class DrawersFailure extends Error {
  readonly reason: FailureReason;

  constructor(reason: FailureReason, detail: string) {
    super(detail);
    this.name = "DrawersFailure";
    this.reason = reason;
  }
}

export const failureOf = (thrown: unknown): DrawersFailure =>
  thrown instanceof DrawersFailure ? thrown : new DrawersFailure("failed", String(thrown));
