/**
 * Does work at once where nobody is typing; otherwise when the hand rests, or with Enter: what is drawn anew meanwhile would
 * hold up the next letter. What comes back calls it off.
 */
export function whenHandRests(work: () => void): () => void {
  listen();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const look = (): void => {
    clearTimeout(timer);
    const since = performance.now() - lastLetter;
    if (since >= 0 && since < restMs) {
      timer = setTimeout(look, restMs - since);
      return;
    }
    waiting.delete(look);
    work();
  };
  waiting.add(look);
  look();
  return () => {
    clearTimeout(timer);
    waiting.delete(look);
  };
}

/** Longer than between two letters of a quick hand. */
const restMs = 200;

let lastLetter = Number.NEGATIVE_INFINITY;
let listeningTo: Window | null = null;
const waiting = new Set<() => void>();

function listen(): void {
  if (listeningTo === window) return;
  listeningTo = window;
  window.addEventListener("keydown", ({ key }) => {
    if (key === "Enter") {
      lastLetter = Number.NEGATIVE_INFINITY;
      for (const look of [...waiting]) look();
    } else if (key.length === 1 || key === "Backspace") lastLetter = performance.now();
  });
}
