import { useCallback, useSyncExternalStore } from "react";

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
