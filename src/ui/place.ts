import { useSyncExternalStore } from "react";

/**
 * Where in the workroom a person is. The place stands in the address after `#`, so that the back button, a reload and
 * a bookmark all work; nothing of the fitting ever does. The door is where one comes in.
 */
export const workPlaces = ["body", "form", "plan", "padding", "finishing"] as const;
export const places = ["door", ...workPlaces, "print", "wall", "turning", "fittings"] as const;
export type Place = (typeof places)[number];
export type WorkPlace = (typeof workPlaces)[number];

export const placeAddress = (place: Place): string => (place === "door" ? "#" : `#${place}`);

export const goTo = (place: Place): void => {
  window.location.hash = place === "door" ? "" : place;
};

export const placeOf = (hash: string): Place => places.find((place) => place === hash.replace(/^#/, "")) ?? "door";

export const usePlace = (): Place => useSyncExternalStore(subscribe, () => placeOf(window.location.hash));

const subscribe = (changed: () => void): (() => void) => {
  window.addEventListener("hashchange", changed);
  return () => window.removeEventListener("hashchange", changed);
};
