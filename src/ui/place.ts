import { useSyncExternalStore } from "react";

/**
 * Where in the workroom a person is. The place stands in the address after `#`, so that the back button, a reload and
 * a bookmark all work; nothing of the fitting ever does. The door is where one comes in. Behind the place the address may
 * name one thing to fill in there, as `#body/napeToWaist` does.
 */
export const workPlaces = ["body", "form", "plan", "padding", "finishing"] as const;
export const places = ["door", ...workPlaces, "print", "wall", "turning", "fittings"] as const;
export type Place = (typeof places)[number];
export type WorkPlace = (typeof workPlaces)[number];

export const placeAddress = (place: Place, thing?: string): string =>
  place === "door" ? "#" : thing === undefined ? `#${place}` : `#${place}/${thing}`;

export const goTo = (place: Place): void => {
  window.location.hash = place === "door" ? "" : place;
};

export const placeOf = (hash: string): Place => places.find((place) => place === partsOf(hash)[0]) ?? "door";

/** The one thing the address asks for inside its place; null where it asks for none. */
export const askedThingOf = (hash: string): string | null => partsOf(hash)[1] ?? null;

const partsOf = (hash: string): readonly string[] => hash.replace(/^#/, "").split("/");

export const usePlace = (): Place => useSyncExternalStore(subscribe, () => placeOf(window.location.hash));

export const useAskedThing = (): string | null =>
  useSyncExternalStore(subscribe, () => askedThingOf(window.location.hash));

const subscribe = (changed: () => void): (() => void) => {
  window.addEventListener("hashchange", changed);
  return () => window.removeEventListener("hashchange", changed);
};
