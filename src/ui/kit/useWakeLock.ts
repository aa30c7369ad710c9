import { useEffect, useState } from "react";

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
