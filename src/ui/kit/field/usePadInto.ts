import { useCallback } from "react";
import { useStoreItself } from "../useStore";
import { type PadKey, pressKey } from "./padKeys";

/**
 * What a key of the pad does to a reading that is being typed. It looks up the text as it is at the press, so that two
 * quick presses never write over each other, and nobody has to hand it every letter.
 */
export function usePadInto(key: string): (pressed: PadKey) => void {
  const store = useStoreItself();
  return useCallback(
    (pressed) => {
      const text = store.getState().fitting.drafts.other[key] ?? "";
      const next = pressKey(text, pressed, text === "");
      store.dispatch({ does: "draft", of: "other", key, text: next === "" ? null : next });
    },
    [store, key],
  );
}
