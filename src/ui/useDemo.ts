import { useCallback } from "react";
import demoFile from "../../shared/demo-fitting.json";
import type { FittingStore } from "../app/store";
import { assert } from "../core/result";
import { readFitting } from "../document/fitting";
import { goTo } from "./place";
import { useStoreItself } from "./useStore";

/** Puts the made-up person on the table. What lay there before is kept, and waits on the shelf. */
export function openDemo(store: FittingStore): void {
  const demo = readFitting(demoFile);
  assert(demo.ok, "the demo fitting can be read");
  if (store.getState().fitting.id !== demo.value.id) store.load(demo.value);
  goTo("plan");
}

export function useOpenDemo(): () => void {
  const store = useStoreItself();
  return useCallback(() => openDemo(store), [store]);
}

export const demoAddress = "#demo";
