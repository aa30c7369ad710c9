/** What the person is shown; "saved" is said only when the newest change offered is the one that was kept. */
export type SaveState<Refusal> =
  | { readonly kind: "nothingYet" }
  | { readonly kind: "saving" }
  | { readonly kind: "saved"; readonly at: string }
  | { readonly kind: "notSaved"; readonly refusal: Refusal };

export type QueuedSave<Refusal> =
  | { readonly kind: "saved"; readonly at: string }
  /** Passing troubles are tried again by the queue itself; the others wait for the person or for the next change. */
  | { readonly kind: "notSaved"; readonly refusal: Refusal; readonly passing: boolean };

/** Calls back after so many milliseconds; the answer calls it off. */
export type Later = (milliseconds: number, work: () => void) => () => void;

export interface SaveQueueOptions<Change, Refusal> {
  /** Keeps one change. The mark is the same whenever the same change is tried again. Never rejects. */
  readonly save: (change: Change, mark: string) => Promise<QueuedSave<Refusal>>;
  readonly onState: (state: SaveState<Refusal>) => void;
  readonly newMark: () => string;
  readonly later: Later;
}

/** Milliseconds to wait before the first, second… try again after a passing trouble; the last one repeats. */
export const pauses: readonly number[] = [500, 2_000, 8_000, 30_000];

/**
 * Milliseconds a change may wait for those after it: whoever writes without a rest is saved all the same, with the moment
 * a browser needs to find time and the save itself within a second of every key.
 */
export const longestWait = 600;

interface Waiting<Change> {
  readonly change: Change;
  readonly mark: string;
  readonly pause: number;
}

/** Saves changes one at a time, always the newest: at once, or after the short pause it came with. */
export class SaveQueue<Change, Refusal> {
  private readonly options: SaveQueueOptions<Change, Refusal>;
  private newest: Waiting<Change> | null = null;
  private running: Promise<void> | null = null;
  private tries = 0;
  /** The pause under way before a save, in milliseconds. */
  private pausing: number | null = null;
  private endPause: () => void = () => {};
  /** Ends the longest wait, which begins with the first change that waits; null while none does. */
  private endWait: (() => void) | null = null;
  /** What waits behind the save under way is saved without a pause. */
  private isHurried = false;
  private isSaidToSave = false;

  constructor(options: SaveQueueOptions<Change, Refusal>) {
    this.options = options;
  }

  /** Hands over the newest change. One with the same pause puts the save off again, one with a longer pause does not. */
  offer(change: Change, pause = 0): void {
    this.newest = { change, mark: this.options.newMark(), pause };
    if (pause > 0) this.endWait ??= this.options.later(longestWait, () => this.retry());
    if (pause === 0) this.retry();
    else if (!this.running) this.pauseBefore(pause);
  }

  /** Ends a pause: saves what is waiting now. */
  hurry(): void {
    if (this.running || this.pausing !== null) this.retry();
  }

  /** Tries to save the newest change, now. */
  retry(): void {
    this.isHurried = this.running !== null;
    if (this.running || !this.newest) return;
    this.stopWaiting();
    this.showSaving();
    this.running = this.saveNow(this.newest);
  }

  /** Waits until nothing is under way, ending a pause, and tells whether the newest change offered has been kept. */
  async settled(): Promise<boolean> {
    for (;;) {
      this.hurry();
      if (!this.running) return this.isIdle();
      await this.running;
    }
  }

  /** Whether every change offered has been kept. */
  isIdle(): boolean {
    return this.newest === null;
  }

  /** Drops what is waiting; a save under way still ends by itself. Whoever stops it shows something else from here on. */
  stop(): void {
    this.stopWaiting();
    this.newest = null;
    this.tries = 0;
    this.isSaidToSave = false;
  }

  private pauseBefore(pause: number): void {
    this.showSaving();
    if (this.pausing !== null && this.pausing < pause) return;
    this.endPause();
    this.pausing = pause;
    this.endPause = this.options.later(pause, () => this.retry());
  }

  private stopWaiting(): void {
    this.endPause();
    this.pausing = null;
    this.endWait?.();
    this.endWait = null;
  }

  private async saveNow(waiting: Waiting<Change>): Promise<void> {
    const outcome = await this.options.save(waiting.change, waiting.mark);
    this.running = null;
    if (this.newest === waiting) this.settle(outcome);
    else if (this.newest && this.newest.pause > 0 && !this.isHurried) this.pauseBefore(this.newest.pause);
    else this.retry();
  }

  private settle(outcome: QueuedSave<Refusal>): void {
    if (outcome.kind === "saved") {
      this.newest = null;
      this.tries = 0;
      this.show({ kind: "saved", at: outcome.at });
    } else {
      const pause = pauses[Math.min(this.tries, pauses.length - 1)] ?? 0;
      if (outcome.passing) this.endPause = this.options.later(pause, () => this.retry());
      this.tries += 1;
      this.show({ kind: "notSaved", refusal: outcome.refusal });
    }
  }

  /** A trouble stays on the screen until it is over, and does not flicker while it is tried again. */
  private showSaving(): void {
    if (this.tries === 0 && !this.isSaidToSave) this.show({ kind: "saving" });
  }

  private show(state: SaveState<Refusal>): void {
    this.isSaidToSave = state.kind === "saving";
    this.options.onState(state);
  }
}
