import { useCallback } from "react";
import { demoFitting } from "../../../app/session/demoFitting";
import type { FittingStore } from "../../../app/session/store";
import { shelf, tell } from "./shelf";
import { goTo } from "../page";
import { useStoreItself } from "../useStore";

/**
 * Opens the made-up person. What lay there before is kept, and waits on the shelf; as long as it cannot be
 * kept it stays where it is, and that is told.
 */
export async function openDemo(store: FittingStore): Promise<void> {
  const { autosave } = shelf.getState();
  if (store.getState().fitting.id !== demoFitting.id) {
    if (autosave !== null) {
      if ((await autosave.put(demoFitting)) !== "put") return tell({ kind: "tableNotKept" });
    } else if (store.getState().cause === "load") store.load(demoFitting);
    else return tell({ kind: "tableNotKept" });
  }
  goTo("plan");
}

export function useOpenDemo(): () => void {
  const store = useStoreItself();
  return useCallback(() => void openDemo(store), [store]);
}

export const demoAddress = "#demo";
