import { startTransition, useEffect, useState } from "react";
import type { StoreApi } from "zustand/vanilla";
import { afterFrame } from "./afterFrame";

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
