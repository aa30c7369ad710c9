/** What became of one letter. The three times, in ms, follow each other without a gap. */
export interface WatchedKey {
  /** Whether it is a letter after which the screen says otherwise: on target or not, and the words to go on with. */
  readonly changed: boolean;
  /** From the event's own time, which the browser sets when the key goes down, until the page heard of it. */
  readonly queued: number;
  /** Until the new words were in the page. */
  readonly worked: number;
  /** Until the frame that shows them was out. */
  readonly drawn: number;
  /** Whether they missed the first frame after the key, and came with a later one. */
  readonly isLate: boolean;
}

declare global {
  interface Window {
    watchedKeys: () => readonly WatchedKey[];
  }
}

/**
 * Runs in the page: watches every letter from its keydown to the frame that shows the changed words; whatever changes
 * there once more before the next letter counts as well. When
 * the first frame after the key was presented the browser says itself (Event Timing, to the nearest 8 ms; nothing below
 * 16). Where the last change came after that frame was made, the second animation frame from then on is taken.
 */
export function keyWatch(): void {
  const keys: {
    at: number;
    isLetter: boolean;
    changed: boolean;
    changedAt: number;
    heard: number;
    made: number;
    later: number;
    shown: number;
  }[] = [];
  const look = () =>
    [".stop-slab", ".band[aria-current]", ".reading-typed"]
      .map((part) => document.querySelector(part)?.textContent ?? "")
      .join("|");
  let seen = look();
  const onKey = ({ timeStamp, key: { length } }: KeyboardEvent) => {
    const heard = performance.now();
    const key = {
      at: timeStamp,
      isLetter: length === 1,
      changed: false,
      changedAt: heard,
      heard,
      made: 0,
      later: 0,
      shown: timeStamp + 16,
    };
    keys.push(key);
    requestAnimationFrame(() => {
      key.made = performance.now();
    });
  };
  document.addEventListener("keydown", onKey, true);
  const watcher = new MutationObserver(() => {
    const [key, now] = [keys.at(-1), look()];
    if (key === undefined || now === seen) return;
    key.changed = key.isLetter;
    key.changedAt = performance.now();
    seen = now;
    if (key.made === 0) return;
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        key.later = performance.now();
      }),
    );
  });
  const changes = { subtree: true, childList: true, characterData: true, attributeFilter: ["aria-current"] };
  watcher.observe(document.body, changes);
  const onTimes = (list: PerformanceObserverEntryList) => {
    for (const { name, startTime, duration } of list.getEntries()) {
      if (!/^(keydown|keypress|beforeinput|input)$/.test(name)) continue;
      const key = keys.findLast(({ at }) => at <= startTime + 1);
      if (key !== undefined) key.shown = Math.max(key.shown, startTime + duration);
    }
  };
  new PerformanceObserver(onTimes).observe({ type: "event", durationThreshold: 16 } as PerformanceObserverInit);
  window.watchedKeys = () =>
    keys.map(({ at, changed, changedAt, heard, later, shown }) => ({
      changed,
      queued: heard - at,
      worked: changedAt - heard,
      drawn: Math.max(shown, later) - changedAt,
      isLate: later > 0,
    }));
}
