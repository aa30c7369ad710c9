import { useCallback } from "react";
import { demoFitting } from "../../../app/session/demoFitting";
import type { FittingStore } from "../../../app/session/store";
import { shelf, tell } from "./shelf";
import { sampleTitle } from "../../../text/workroom";
import { goTo } from "../page";
import { useStoreItself } from "../useStore";

/**
 * Opens the made-up person. What lay there before is kept, and waits on the shelf; as long as it cannot be
 * kept it stays where it is, and that is told.
 */
export async function openDemo(store: FittingStore): Promise<void> {
  const { autosave } = shelf.getState();
  const demo = { ...demoFitting, title: sampleTitle(demoFitting.title) };
  if (store.getState().fitting.id !== demoFitting.id) {
    if (autosave !== null) {
      if ((await autosave.put(demo)) !== "put") return tell({ kind: "tableNotKept" });
    } else if (store.getState().cause === "load") store.load(demo);
    else return tell({ kind: "tableNotKept" });
  }
  goTo("plan");
}

export function useOpenDemo(): () => void {
  const store = useStoreItself();
  return useCallback(() => void openDemo(store), [store]);
}

export const demoAddress = "#demo";
