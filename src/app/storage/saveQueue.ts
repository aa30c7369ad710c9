/**
 * Saves every change at once, one save at a time, always the newest. While one save is under way later changes wait,
 * and only the last of them is saved next. What the person is shown is one of the four states; "saved" is said only
 * when the newest change offered is the one that was kept.
 */
export type SaveState<Refusal> =
  | { readonly kind: "nothingYet" }
  | { readonly kind: "saving" }
  | { readonly kind: "saved"; readonly at: string }
  | { readonly kind: "notSaved"; readonly refusal: Refusal };

export type QueuedSave<Refusal> =
  | { readonly kind: "saved"; readonly at: string }
  /** Passing troubles are tried again by the queue itself; the others wait for the person or for the next change. */
  | { readonly kind: "notSaved"; readonly refusal: Refusal; readonly passing: boolean };

export interface SaveQueueOptions<Change, Refusal> {
  /** Keeps one change. The mark is the same whenever the same change is tried again. Never rejects. */
  readonly save: (change: Change, mark: string) => Promise<QueuedSave<Refusal>>;
  readonly onState: (state: SaveState<Refusal>) => void;
  readonly newMark: () => string;
  /** Calls back after so many milliseconds; the answer calls it off. */
  readonly later: (milliseconds: number, work: () => void) => () => void;
}

export interface SaveQueue<Change> {
  /** Hands over the newest change to be saved. */
  offer(change: Change): void;
  /** Tries the newest change again, now. */
  retry(): void;
  /** Waits until nothing is under way, and tells whether the newest change offered has been kept. */
  settled(): Promise<boolean>;
  /** Drops what is waiting and stops; a save under way still ends by itself. */
  stop(): void;
}

/** Milliseconds to wait before the first, second… try again after a passing trouble; the last one repeats. */
export const pauses: readonly number[] = [500, 2_000, 8_000, 30_000];

interface Waiting<Change> {
  readonly change: Change;
  readonly mark: string;
}

export function saveQueue<Change, Refusal>(options: SaveQueueOptions<Change, Refusal>): SaveQueue<Change> {
  let newest: Waiting<Change> | null = null;
  let running: Promise<void> | null = null;
  let callOff: () => void = () => {};
  let tries = 0;

  const takeUp = (): void => {
    callOff();
    if (running || !newest) return;
    // A trouble stays on the screen until it is over, and does not flicker while it is tried again.
    if (tries === 0) options.onState({ kind: "saving" });
    running = saveNewest(newest);
  };

  const saveNewest = async (first: Waiting<Change>): Promise<void> => {
    let waiting = first;
    for (;;) {
      const outcome = await options.save(waiting.change, waiting.mark);
      if (newest === waiting || newest === null) {
        running = null;
        return settle(waiting, outcome);
      }
      waiting = newest;
    }
  };

  const settle = (waiting: Waiting<Change>, outcome: QueuedSave<Refusal>): void => {
    if (newest !== waiting) return;
    if (outcome.kind === "saved") {
      newest = null;
      tries = 0;
      options.onState({ kind: "saved", at: outcome.at });
      return;
    }
    if (outcome.passing) callOff = options.later(pauses[Math.min(tries, pauses.length - 1)] ?? 0, takeUp);
    tries += 1;
    options.onState({ kind: "notSaved", refusal: outcome.refusal });
  };

  return {
    offer: (change) => {
      newest = { change, mark: options.newMark() };
      takeUp();
    },
    retry: takeUp,
    settled: async () => {
      while (running) await running;
      return newest === null;
    },
    stop: () => {
      callOff();
      newest = null;
    },
  };
}
