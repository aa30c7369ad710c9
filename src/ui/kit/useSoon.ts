import { startTransition, useEffect, useState } from "react";
import type { StoreApi } from "zustand/vanilla";

/**
 * What is picked out of a store, for a part of the screen that may follow: after a change that `mayWait`, the frame that
 * shows what was touched goes out first. Every other change shows at once, as does the newest state on arriving.
 */
export function useSoon<State, Part>(
  store: Pick<StoreApi<State>, "getState" | "subscribe">,
  pick: (state: State) => Part,
  mayWait: (state: State) => boolean,
): Part {
  const [part, setPart] = useState(() => pick(store.getState()));
  useEffect(() => {
    let callOff: (() => void) | null = null;
    const look = () => {
      callOff?.();
      callOff = null;
      setPart(() => pick(store.getState()));
    };
    const stop = store.subscribe((state) => {
      if (!mayWait(state)) look();
      else callOff ??= afterFrame(() => startTransition(look));
    });
    look();
    return () => {
      stop();
      callOff?.();
    };
  }, [store, pick, mayWait]);
  return part;
}

/** A value a frame later than it is given. */
export function useLater<Value>(value: Value): Value {
  const [later, setLater] = useState(value);
  useEffect(() => afterFrame(() => startTransition(() => setLater(value))), [value]);
  return later;
}

/**
 * Does work once the frame that is being made is out, so that what a person does now is shown before it. All that waits
 * for one frame is done together; the answer calls it off. A page that is put aside makes no frames: there the work waits
 * until it is looked at again.
 */
function afterFrame(work: () => void): () => void {
  const turns = next ?? startWaiting();
  // A wrapper of its own, so that the same work may wait twice.
  const turn = () => work();
  turns.add(turn);
  return () => turns.delete(turn);
}

/** What is painted and put on the screen beside this thread is not held up by the work that waited. */
const paintingMs = 20;

/** What waits for the frame that is being made. */
let next: Set<() => void> | null = null;

function startWaiting(): Set<() => void> {
  const turns = new Set<() => void>();
  next = turns;
  requestAnimationFrame(() => {
    next = null;
    setTimeout(() => {
      for (const turn of turns) turn();
    }, paintingMs);
  });
  return turns;
}
