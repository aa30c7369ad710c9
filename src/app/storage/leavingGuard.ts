import type { OpenState } from "./openFitting";

/** Lets the browser ask before the page is left, only while something is not kept. The answer takes the guard away. */
export function leavingGuard(page: Window, state: () => OpenState | null): () => void {
  const ask = (leaving: BeforeUnloadEvent): void => {
    const saving = state()?.saving.kind;
    if (saving === "saving" || saving === "notSaved") leaving.preventDefault();
  };
  page.addEventListener("beforeunload", ask);
  return () => page.removeEventListener("beforeunload", ask);
}
