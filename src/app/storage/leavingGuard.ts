import type { OpenState } from "./openFitting";

/**
 * Lets the browser ask before the page is left, but only while something is not kept: everything else is saved already
 * and needs no question. The answer takes the guard away.
 */
export function leavingGuard(page: Window, state: () => OpenState | null): () => void {
  const ask = (leaving: BeforeUnloadEvent): void => {
    const saving = state()?.saving.kind;
    if (saving === "saving" || saving === "notSaved") leaving.preventDefault();
  };
  page.addEventListener("beforeunload", ask);
  return () => page.removeEventListener("beforeunload", ask);
}
