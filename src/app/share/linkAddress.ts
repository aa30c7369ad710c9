/** Where a shared fitting stands in an address; kept apart from its reader so that the first screen stays small. */
export const linkStart = "#fitting=";

/** What stands after the `#` where it holds a shared fitting, else null. Some messengers write `%3D` for the `=`. */
export function sharedFitting(hash: string): string | null {
  const plain = hash.replace(/^#fitting%3d/i, linkStart);
  return plain.startsWith(linkStart) ? plain : null;
}

/**
 * Takes the shared fitting out of the address: what stood after the `#`, or null where there is none. The address is
 * cleaned at once, so that it is not copied on, kept in the history, or read again by a reload.
 */
export function takeLink(page: Pick<Window, "location" | "history">): string | null {
  const { hash, pathname, search } = page.location;
  const shared = sharedFitting(hash);
  if (shared === null) return null;
  page.history.replaceState(null, "", pathname + search);
  return shared;
}
