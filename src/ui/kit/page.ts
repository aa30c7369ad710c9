import { useSyncExternalStore } from "react";

/**
 * Where in the workroom a person is. The place stands in the address after `#`, so that the back button, a reload and
 * a bookmark all work; nothing of the fitting ever does. The door is where one comes in. Behind the place the address may
 * name one thing to fill in there, as `#person/napeToWaist` does.
 */
export const workPages = ["body", "form", "plan", "padding", "finishing"] as const;
export const pages = ["door", ...workPages, "print", "wall", "turning", "fittings"] as const;
export type Page = (typeof pages)[number];
export type WorkPage = (typeof workPages)[number];

/** What stands in the address: the names of the screens. */
const addresses: { readonly [page in Page]: string } = {
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

export const pageAddress = (page: Page, thing?: string): string =>
  thing === undefined ? `#${addresses[page]}` : `#${addresses[page]}/${thing}`;

export const goTo = (page: Page): void => {
  window.location.hash = addresses[page];
};

/** Bookmarks of an older release have the names of then, which are those in the code. */
const pageOf = (hash: string): Page => {
  const [name] = partsOf(hash);
  return pages.find((page) => addresses[page] === name) ?? pages.find((page) => page === name) ?? "door";
};

/** The one thing the address asks for inside its place; null where it asks for none. */
export const askedThingOf = (hash: string): string | null => partsOf(hash)[1] ?? null;

const partsOf = (hash: string): readonly string[] => hash.replace(/^#/, "").split("/");

export const usePage = (): Page => useSyncExternalStore(subscribe, () => pageOf(window.location.hash));

export const useAskedThing = (): string | null =>
  useSyncExternalStore(subscribe, () => askedThingOf(window.location.hash));

const subscribe = (changed: () => void): (() => void) => {
  window.addEventListener("hashchange", changed);
  return () => window.removeEventListener("hashchange", changed);
};
