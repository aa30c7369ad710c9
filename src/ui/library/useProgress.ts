import { useEffect, useState } from "react";
import type { Fitting } from "../../document/fitting";
import { girthsLeft, leftToDo } from "./leftToDo";

/**
 * What is left to do in a fitting of the list, in a few words. Planning a whole list takes a while, so each is worked
 * out when the browser has nothing better to do, one after the other.
 */
export function useProgress(fitting: Fitting): string {
  const [text, setText] = useState(() => girthsLeft(fitting) ?? known.get(fitting) ?? "");
  useEffect(() => {
    const quick = girthsLeft(fitting) ?? known.get(fitting);
    if (quick !== undefined) {
      setText(quick);
      return;
    }
    return whenIdle(() => {
      const found = leftToDo(fitting);
      known.set(fitting, found);
      setText(found);
    });
  }, [fitting]);
  return text;
}

const known = new WeakMap<Fitting, string>();

function whenIdle(work: () => void): () => void {
  if (typeof window.requestIdleCallback === "function") {
    const handle = window.requestIdleCallback(work);
    return () => window.cancelIdleCallback(handle);
  }
  const timer = window.setTimeout(work, 50);
  return () => window.clearTimeout(timer);
}
