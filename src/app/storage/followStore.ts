import type { FittingStore } from "../store";
import type { FittingHistory } from "./fittingOutcome";
import type { OpenFitting } from "./openFitting";

/**
 * Hands every change of the store to the open fitting, which saves it. What was read from the storage comes into the
 * store as a load, and is not handed back. The answer stops it.
 */
export function followStore(store: FittingStore, open: OpenFitting): () => void {
  return store.subscribe((state, before) => {
    if (state.cause === "load" || state.fitting === before.fitting) return;
    const history: FittingHistory = { past: state.past, future: state.future };
    open.keep(state.fitting, history);
  });
}
