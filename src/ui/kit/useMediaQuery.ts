import { useCallback, useSyncExternalStore } from "react";

/** Whether a media query holds now. */
export function useMediaQuery(query: string): boolean {
  const subscribe = useCallback(
    (changed: () => void) => {
      const list = window.matchMedia(query);
      list.addEventListener("change", changed);
      return () => list.removeEventListener("change", changed);
    },
    [query],
  );
  return useSyncExternalStore(subscribe, () => window.matchMedia(query).matches);
}

/** Wide enough for the work to lie beside the list it came from. In rem, so that large text counts. */
export const wideQuery = "(min-width: 58rem)";
/** A finger is the finest pointer at hand. */
export const touchQuery = "(pointer: coarse)";
/** A phone held upright: one thing at a time fills the screen. */
export const phoneQuery = "(max-width: 40rem)";
