/**
 * One tab writes in a fitting at a time: the one that holds its write lock, a lock of the browser, which is free again
 * the moment its tab is closed or dies.
 */
export interface WriteLock {
  letGo(): void;
  /** Resolves when the write lock is gone: let go, or taken by another tab by force. */
  readonly gone: Promise<"letGo" | "taken">;
}

/** The part of the browser's lock manager that is used here (W3C Web Locks API). */
export type Locks = Pick<LockManager, "request">;

/**
 * The pen if it is free, after waiting for it, or by force, which another tab notices; null where it is not to be had.
 * Where a browser has no locks, or a page may not use them, everybody may write: the revisions alone decide.
 */
export async function takeWriteLock(
  locks: Locks | undefined,
  id: string,
  options: LockOptions,
): Promise<WriteLock | null> {
  const anybodys: WriteLock = { letGo: () => {}, gone: new Promise(() => {}) };
  if (locks === undefined) return anybodys;
  return requestWriteLock(locks, id, options).catch(() => (options.ifAvailable ? anybodys : null));
}

function requestWriteLock(locks: Locks, id: string, options: LockOptions): Promise<WriteLock | null> {
  return new Promise((resolve, reject) => {
    let letGo: () => void = () => {};
    const held = new Promise<void>((release) => {
      letGo = release;
    });
    const request = locks.request(`padwright pen ${id}`, options, (lock) => {
      if (lock === null) return resolve(null);
      resolve({ letGo, gone });
      return held;
    });
    const gone = request.then(
      () => "letGo" as const,
      (refused: unknown) => {
        reject(refused);
        return "taken" as const;
      },
    );
  });
}
