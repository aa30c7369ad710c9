/**
 * Saves every change at once, or after the short pause it came with, one save at a time, always the newest. While one save
 * is under way later changes wait, and only the last of them is saved next. What the person is shown is one of the four states; "saved" is said only
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
  /**
   * Hands over the newest change to be saved, at once or after a pause in milliseconds. A change with the same pause puts it off
   * again, though no change waits longer than `longestWait`; one with a longer pause does not.
   */
  offer(change: Change, pause?: number): void;
  /** Ends a pause: saves what is waiting now. */
  hurry(): void;
  /** Tries the newest change again, now. */
  retry(): void;
  /** Waits until nothing is under way, ending a pause, and tells whether the newest change offered has been kept. */
  settled(): Promise<boolean>;
  /** Whether every change offered has been kept. */
  isIdle(): boolean;
  /** Drops what is waiting and stops; a save under way still ends by itself. */
  stop(): void;
}

/** Milliseconds to wait before the first, second… try again after a passing trouble; the last one repeats. */
export const pauses: readonly number[] = [500, 2_000, 8_000, 30_000];

/**
 * Milliseconds a change may wait for those after it: somebody who writes without a rest is saved all the same, with the
 * moment a browser needs to find time and the save itself within a second of every key.
 */
export const longestWait = 400;

interface Waiting<Change> {
  readonly change: Change;
  readonly mark: string;
  readonly pause: number;
}

export function saveQueue<Change, Refusal>(options: SaveQueueOptions<Change, Refusal>): SaveQueue<Change> {
  return new Queue(options);
}

class Queue<Change, Refusal> implements SaveQueue<Change> {
  private readonly options: SaveQueueOptions<Change, Refusal>;
  private newest: Waiting<Change> | null = null;
  private running: Promise<void> | null = null;
  private callOff: () => void = () => {};
  private tries = 0;
  /** The pause that is under way before a save. */
  private pausing: number | null = null;
  /** Calls off the end of the longest wait, from the first change that waits on; null while none does. */
  private callOffWait: (() => void) | null = null;
  /** The longest wait ended while another save was under way. */
  private isOverdue = false;
  private isSaidToSave = false;

  constructor(options: SaveQueueOptions<Change, Refusal>) {
    this.options = options;
  }

  offer(change: Change, pause = 0): void {
    this.newest = { change, mark: this.options.newMark(), pause };
    if (pause > 0) this.boundWait();
    if (this.running) return;
    if (pause > 0) this.pauseBefore(pause);
    else this.takeUp();
  }

  hurry(): void {
    if (this.pausing !== null) this.takeUp();
  }

  retry(): void {
    this.takeUp();
  }

  async settled(): Promise<boolean> {
    for (;;) {
      this.hurry();
      if (!this.running) return this.newest === null;
      await this.running;
    }
  }

  isIdle(): boolean {
    return this.newest === null;
  }

  stop(): void {
    this.endPause();
    this.newest = null;
    // Whoever stops it shows something else from here on.
    this.tries = 0;
    this.isSaidToSave = false;
  }

  private takeUp(): void {
    this.endPause();
    if (this.running || !this.newest) return;
    this.showSaving();
    this.running = this.saveNewest(this.newest);
  }

  private pauseBefore(pause: number): void {
    this.showSaving();
    if (this.pausing !== null && this.pausing < pause) return;
    this.callOff();
    this.pausing = pause;
    this.callOff = this.options.later(pause, () => this.takeUp());
  }

  private boundWait(): void {
    this.callOffWait ??= this.options.later(longestWait, () => {
      if (this.running) this.isOverdue = true;
      else this.takeUp();
    });
  }

  private endPause(): void {
    this.callOff();
    this.pausing = null;
    this.endWait();
  }

  private endWait(): void {
    this.callOffWait?.();
    this.callOffWait = null;
    this.isOverdue = false;
  }

  private async saveNewest(first: Waiting<Change>): Promise<void> {
    let waiting = first;
    for (;;) {
      const outcome = await this.options.save(waiting.change, waiting.mark);
      if (this.newest === waiting || this.newest === null) {
        this.running = null;
        return this.settle(waiting, outcome);
      }
      waiting = this.newest;
      if (waiting.pause > 0 && !this.isOverdue) {
        this.running = null;
        return this.pauseBefore(waiting.pause);
      }
      this.endWait();
    }
  }

  private settle(waiting: Waiting<Change>, outcome: QueuedSave<Refusal>): void {
    if (this.newest !== waiting) return;
    if (outcome.kind === "saved") {
      this.newest = null;
      this.tries = 0;
      this.show({ kind: "saved", at: outcome.at });
      return;
    }
    const pause = pauses[Math.min(this.tries, pauses.length - 1)] ?? 0;
    if (outcome.passing) this.callOff = this.options.later(pause, () => this.takeUp());
    this.tries += 1;
    this.show({ kind: "notSaved", refusal: outcome.refusal });
  }

  // A trouble stays on the screen until it is over, and does not flicker while it is tried again.
  private showSaving(): void {
    if (this.tries === 0 && !this.isSaidToSave) this.show({ kind: "saving" });
  }

  private show(state: SaveState<Refusal>): void {
    this.isSaidToSave = state.kind === "saving";
    this.options.onState(state);
  }
}
