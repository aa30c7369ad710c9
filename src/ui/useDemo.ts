import { useCallback } from "react";
import demoFile from "../../shared/demo-fitting.json";
import type { FittingStore } from "../app/store";
import { assert } from "../core/result";
import { readFitting } from "../document/fitting";
import { shelf, tell } from "./library/shelf";
import { goTo } from "./place";
import { useStoreItself } from "./useStore";

/**
 * Puts the made-up person on the table. What lay there before is kept, and waits on the shelf; as long as it cannot be
 * kept it stays where it is, and that is told.
 */
export async function openDemo(store: FittingStore): Promise<void> {
  const demo = readFitting(demoFile);
  assert(demo.ok, "the demo fitting can be read");
  const { keeping } = shelf.getState();
  if (store.getState().fitting.id !== demo.value.id) {
    if (keeping !== null) {
      if ((await keeping.put(demo.value)) !== "put") return tell({ kind: "tableNotKept" });
    } else if (store.getState().cause === "load") store.load(demo.value);
    else return tell({ kind: "tableNotKept" });
  }
  goTo("plan");
}

export function useOpenDemo(): () => void {
  const store = useStoreItself();
  return useCallback(() => void openDemo(store), [store]);
}

export const demoAddress = "#demo";
