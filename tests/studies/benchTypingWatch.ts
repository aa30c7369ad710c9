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
 * Runs in the page: watches every letter from its keydown to the frame after the change of the words. The first
 * animation frame after the change comes before it is painted, the second after: so the sum is never too small, and up
 * to one frame too large.
 */
export function keyWatch(): void {
  const keys: { changed: boolean; queued: number; worked: number; drawn: number }[] = [];
  const words = () => [...document.querySelectorAll(".reading-left")].map((line) => line.textContent).join("|");
  let look: MutationObserver | undefined;
  const onKey = ({ timeStamp }: KeyboardEvent) => {
    // A letter that changed nothing, such as a decimal point, must not be given the change of the next one.
    look?.disconnect();
    const [heard, before] = [performance.now(), words()];
    const key = { changed: false, queued: heard - timeStamp, worked: 0, drawn: 0 };
    keys.push(key);
    const watcher = new MutationObserver(() => {
      if (words() === before) return;
      watcher.disconnect();
      const changed = performance.now();
      key.changed = true;
      key.worked = changed - heard;
      requestAnimationFrame(() =>
        requestAnimationFrame(() => {
          key.drawn = performance.now() - changed;
        }),
      );
    });
    watcher.observe(document.body, { subtree: true, childList: true, characterData: true });
    look = watcher;
  };
  document.addEventListener("keydown", onKey, true);
  window.watchedKeys = () => keys;
}
