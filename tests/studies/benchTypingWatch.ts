/** What became of one letter. The three times, in ms, follow each other without a gap. */
export interface WatchedKey {
  /** Whether what is left to go in the stretch typed into reads otherwise after it. */
  readonly changed: boolean;
  /** From the event's own time, which the browser sets when the key goes down, until the page heard of it. */
  readonly queued: number;
  /** Until the new words and the tape drawn with them were in the page. */
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
 * Runs in the page: watches every letter from its keydown to the frame that shows the changed words and the changed
 * tape of the stretch it was typed into; whatever changes there once more before the next letter counts as well. When
 * the first frame after the key was presented the browser says itself (Event Timing, to the nearest 8 ms; nothing below
 * 16). Where the last change came after that frame was made, the second animation frame from then on is taken.
 */
export function keyWatch(): void {
  const keys: {
    at: number;
    changed: boolean;
    changedAt: number;
    heard: number;
    made: number;
    later: number;
    shown: number;
  }[] = [];
  let line: Element | null = null;
  let seen = { words: "", tape: "" };
  const look = () => ({
    words: line?.querySelector(".reading-left")?.textContent ?? "",
    tape: Array.from(line?.querySelectorAll("path") ?? [], (path) => path.getAttribute("d")).join(),
  });
  document.addEventListener("focusin", ({ target }) => {
    line = target instanceof Element ? target.closest(".reading") : null;
    seen = look();
  });
  const onKey = ({ timeStamp }: KeyboardEvent) => {
    const heard = performance.now();
    const key = { at: timeStamp, changed: false, changedAt: heard, heard, made: 0, later: 0, shown: timeStamp + 16 };
    keys.push(key);
    requestAnimationFrame(() => {
      key.made = performance.now();
    });
  };
  document.addEventListener("keydown", onKey, true);
  const watcher = new MutationObserver(() => {
    const [key, now] = [keys.at(-1), look()];
    if (key === undefined || (now.words === seen.words && now.tape === seen.tape)) return;
    key.changed ||= now.words !== seen.words;
    key.changedAt = performance.now();
    seen = now;
    if (key.made === 0) return;
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        key.later = performance.now();
      }),
    );
  });
  const changes = { subtree: true, childList: true, characterData: true, attributeFilter: ["d"] };
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
