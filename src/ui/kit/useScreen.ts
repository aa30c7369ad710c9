import { useCallback, useEffect, useState, useSyncExternalStore } from "react";

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

/**
 * Keeps the screen awake while someone is pinning. Browsers give the lock up whenever the page is hidden, so it is
 * asked for again on coming back; one that refuses, or knows no lock, is simply reported.
 */
type WakeState = "off" | "on" | "refused" | "unknown";

export function useWakeLock(wanted: boolean): WakeState {
  const [state, setState] = useState<WakeState>("off");

  useEffect(() => {
    if (!("wakeLock" in navigator)) {
      setState("unknown");
      return undefined;
    }
    if (!wanted) {
      setState("off");
      return undefined;
    }
    let lock: WakeLockSentinel | null = null;
    let isGone = false;
    const ask = async () => {
      if (document.visibilityState !== "visible") return;
      try {
        lock = await navigator.wakeLock.request("screen");
        if (isGone) await lock.release();
        else setState("on");
      } catch {
        setState("refused");
      }
    };
    const onVisible = () => void ask();
    void ask();
    document.addEventListener("visibilitychange", onVisible);
    return () => {
      isGone = true;
      document.removeEventListener("visibilitychange", onVisible);
      void lock?.release().catch(() => {});
    };
  }, [wanted]);

  return state;
}

/** Full screen of the whole page, where the browser allows it. A browser that refuses simply stays as it is. */
export interface FullScreen {
  readonly allowed: boolean;
  readonly on: boolean;
  readonly toggle: () => void;
}

export function useFullScreen(): FullScreen {
  const on = useSyncExternalStore(
    subscribe,
    () => document.fullscreenElement !== null && document.fullscreenElement !== undefined,
  );
  const toggle = useCallback(() => {
    if (!isAllowed()) return;
    const asked = document.fullscreenElement ? document.exitFullscreen() : document.documentElement.requestFullscreen();
    asked.catch(() => {});
  }, []);
  return { allowed: isAllowed(), on, toggle };
}

const subscribe = (changed: () => void): (() => void) => {
  document.addEventListener("fullscreenchange", changed);
  return () => document.removeEventListener("fullscreenchange", changed);
};

/** Some tablets know no full screen at all; others forbid it to a page inside another. */
const isAllowed = (): boolean => document.fullscreenEnabled === true;
