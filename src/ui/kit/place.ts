import { useSyncExternalStore } from "react";

/**
 * Where in the workroom a person is. The place stands in the address after `#`, so that the back button, a reload and
 * a bookmark all work; nothing of the fitting ever does. The door is where one comes in. Behind the place the address may
 * name one thing to fill in there, as `#person/napeToWaist` does.
 */
export const workPlaces = ["body", "form", "plan", "padding", "finishing"] as const;
export const places = ["door", ...workPlaces, "print", "wall", "turning", "fittings"] as const;
export type Place = (typeof places)[number];
export type WorkPlace = (typeof workPlaces)[number];

/** What stands in the address: the names of the screens. */
const addresses: { readonly [place in Place]: string } = {
  door: "",
  body: "person",
  form: "form",
  plan: "plan",
  padding: "padding",
  finishing: "finishing",
  print: "print",
  wall: "class",
  turning: "3d",
  fittings: "fittings",
};

export const placeAddress = (place: Place, thing?: string): string =>
  thing === undefined ? `#${addresses[place]}` : `#${addresses[place]}/${thing}`;

export const goTo = (place: Place): void => {
  window.location.hash = addresses[place];
};

/** Bookmarks of an older release have the names of then, which are those in the code. */
export const placeOf = (hash: string): Place => {
  const [name] = partsOf(hash);
  return places.find((place) => addresses[place] === name) ?? places.find((place) => place === name) ?? "door";
};

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
