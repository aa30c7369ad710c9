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
    const asked = document.fullscreenElement ? document.exitFullscreen() : document.documentElement.requestFullscreen();
    asked.catch(() => {});
  }, []);
  return { allowed: document.fullscreenEnabled === true, on, toggle };
}

const subscribe = (changed: () => void): (() => void) => {
  document.addEventListener("fullscreenchange", changed);
  return () => document.removeEventListener("fullscreenchange", changed);
};
