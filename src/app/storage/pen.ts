/**
 * One tab writes in a fitting at a time: the one that holds its pen. A pen is a lock of the browser, so it is free
 * again the moment its tab is closed or dies. Browsers without locks have no pens, and rely on revisions alone.
 */
export interface Pen {
  letGo(): void;
  /** Resolves when the pen is gone: let go, or taken by another tab by force. */
  readonly gone: Promise<"letGo" | "taken">;
}

export type PenAnswer =
  | { readonly kind: "held"; readonly pen: Pen }
  | { readonly kind: "elsewhere" }
  | { readonly kind: "noPens" };

/** The part of the browser's lock manager that is used here (W3C Web Locks API). */
export type Locks = Pick<LockManager, "request">;

/** Takes the pen if it is free, or by force, which another tab notices as its pen being taken. */
export async function takePen(locks: Locks | undefined, id: string, how: "ifFree" | "byForce"): Promise<PenAnswer> {
  if (locks === undefined) return { kind: "noPens" };
  const options: LockOptions = how === "ifFree" ? { ifAvailable: true } : { steal: true };
  try {
    const pen = await requestPen(locks, id, options);
    return pen === null ? { kind: "elsewhere" } : { kind: "held", pen };
  } catch {
    // A page without a secure origin has the interface and may not use it.
    return { kind: "noPens" };
  }
}

/** Waits in the queue for the pen; null when the waiting was called off. */
export async function waitForPen(locks: Locks, id: string, signal: AbortSignal): Promise<Pen | null> {
  try {
    return await requestPen(locks, id, { signal });
  } catch {
    return null;
  }
}

function requestPen(locks: Locks, id: string, options: LockOptions): Promise<Pen | null> {
  return new Promise((resolve, reject) => {
    let letGo: () => void = () => {};
    const held = new Promise<void>((release) => {
      letGo = release;
    });
    const request = locks.request(penName(id), options, (lock) => {
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

const penName = (id: string): string => `padwright pen ${id}`;
