/** What became of one letter. The three times, in ms, follow each other without a gap. */
export interface WatchedKey {
  /** Whether what is left to go reads otherwise after it. */
  readonly changed: boolean;
  /** From the event's own time, which the browser sets when the key goes down, until the page heard of it. */
  readonly queued: number;
  /** Until the new words were in the page. */
  readonly worked: number;
  /** Until the frame that shows them was out. */
  readonly drawn: number;
}

declare global {
  interface Window {
    watchedKeys: () => readonly WatchedKey[];
  }
}

/**
 * Runs in the page: watches every letter from its keydown to the frame that shows the changed words. When that frame was
 * presented the browser says itself (Event Timing, in steps of 8 ms); where the words changed only after it, the second
 * animation frame from then on is taken, which is never too early and up to one frame too late.
 */
export function keyWatch(): void {
  const keys: { at: number; changed: boolean; changedAt: number; queued: number; framed: number; shown: number }[] = [];
  const words = () => [...document.querySelectorAll(".reading-left")].map((line) => line.textContent).join("|");
  let look: MutationObserver | undefined;
  const onKey = ({ timeStamp }: KeyboardEvent) => {
    // A letter that changed nothing, such as a decimal point, must not be given the change of the next one.
    look?.disconnect();
    const [heard, before] = [performance.now(), words()];
    const key = { at: timeStamp, changed: false, changedAt: heard, queued: heard - timeStamp, framed: 0, shown: 0 };
    keys.push(key);
    const watcher = new MutationObserver(() => {
      if (words() === before) return;
      watcher.disconnect();
      key.changed = true;
      key.changedAt = performance.now();
      requestAnimationFrame(() =>
        requestAnimationFrame(() => {
          key.framed = performance.now();
        }),
      );
    });
    watcher.observe(document.body, { subtree: true, childList: true, characterData: true });
    look = watcher;
  };
  document.addEventListener("keydown", onKey, true);
  const onTimes = (list: PerformanceObserverEntryList) => {
    for (const { name, startTime, duration } of list.getEntries()) {
      if (!/^(keydown|keypress|beforeinput|input)$/.test(name)) continue;
      const key = keys.findLast(({ at }) => at <= startTime + 1);
      if (key !== undefined) key.shown = Math.max(key.shown, startTime + duration);
    }
  };
  new PerformanceObserver(onTimes).observe({ type: "event", durationThreshold: 16 } as PerformanceObserverInit);
  window.watchedKeys = () =>
    keys.map(({ at, changed, changedAt, queued, framed, shown }) => ({
      changed,
      queued,
      worked: changedAt - at - queued,
      drawn: (shown > changedAt ? Math.min(shown, framed) : framed) - changedAt,
    }));
}
