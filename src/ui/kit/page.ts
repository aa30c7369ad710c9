import { type RefCallback, useCallback, useSyncExternalStore } from "react";

/**
 * Where in the workroom a person is. The place stands in the address after `#`, so that the back button, a reload and
 * a bookmark all work; nothing of the fitting ever does. Home is where one comes in. Behind the place the address may
 * name one thing to fill in there, as `#person/napeToWaist` does.
 */
export const workPages = ["body", "form", "plan", "padding", "finishing"] as const;
export const pages = ["home", ...workPages, "print", "class", "remote", "view3d", "fittings"] as const;
export type Page = (typeof pages)[number];
export type WorkPage = (typeof workPages)[number];

/** What stands in the address: the names of the screens. */
const addresses: { readonly [page in Page]: string } = {
  home: "",
  body: "person",
  form: "form",
  plan: "plan",
  padding: "padding",
  finishing: "finishing",
  print: "print",
  class: "class",
  remote: "remote",
  view3d: "3d",
  fittings: "fittings",
};

/** Names that stood in the address before. */
const earlierNames: { readonly [name: string]: Page | undefined } = { body: "body", wall: "class", turning: "view3d" };

export const pageAddress = (page: Page, thing?: string): string =>
  thing === undefined ? `#${addresses[page]}` : `#${addresses[page]}/${thing}`;

export const goTo = (page: Page): void => {
  window.location.hash = addresses[page];
};

/** Bookmarks of older releases have the names of then. */
const pageOf = (hash: string): Page => {
  const [name] = partsOf(hash);
  return pages.find((page) => addresses[page] === name) ?? earlierNames[name ?? ""] ?? "home";
};

/** The one thing the address asks for inside its place; null where it asks for none. */
export const askedThingOf = (hash: string): string | null => partsOf(hash)[1] ?? null;

/** What the address names to reach the list of what is bought. */
export const suppliesThing = "supplies";

const partsOf = (hash: string): readonly string[] => hash.replace(/^#/, "").split("/");

export const usePage = (): Page => useSyncExternalStore(subscribe, () => pageOf(window.location.hash));

export const useAskedThing = (): string | null =>
  useSyncExternalStore(subscribe, () => askedThingOf(window.location.hash));

/** Comes into sight where the address asks for it. */
export function usePlaceAsked(thing: string): RefCallback<HTMLElement> {
  const isAsked = useAskedThing() === thing;
  return useCallback(
    (place: HTMLElement | null) => {
      if (isAsked) place?.scrollIntoView?.();
    },
    [isAsked],
  );
}

const subscribe = (changed: () => void): (() => void) => {
  const onHash = ({ oldURL }: HashChangeEvent) => {
    const hash = /#.*$/.exec(oldURL)?.[0];
    if (hash !== undefined) earlier = pageOf(hash);
    else if (oldURL !== "") earlier = "home";
    changed();
  };
  window.addEventListener("hashchange", onHash);
  return () => window.removeEventListener("hashchange", onHash);
};

let earlier: Page | null = null;

/** The page before this one; null where the tool was opened here. */
export const pageBefore = (): Page | null => earlier;
