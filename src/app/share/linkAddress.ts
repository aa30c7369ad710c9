/** Where a shared fitting stands in an address; kept apart from its reader so that the first screen stays small. */
export const linkStart = "#fitting=";

export const hasSharedFitting = (hash: string): boolean => hash.startsWith(linkStart);

/**
 * Takes the shared fitting out of the address: what stood after the `#`, or null where there is none. The address is
 * cleaned at once, so that it is not copied on, kept in the history, or read again by a reload.
 */
export function takeLink(page: Pick<Window, "location" | "history">): string | null {
  const { hash, pathname, search } = page.location;
  if (!hasSharedFitting(hash)) return null;
  page.history.replaceState(null, "", pathname + search);
  return hash;
}
