import type { Autosave } from "../../../app/storage/autosave";
import { libraryWords } from "../../../text/library";
import { useGoOn } from "../useGoOn";

/**
 * Opens a kept fitting where its work stands; what comes back is null then, and otherwise the sentence that says why not.
 * Opening takes a moment: whoever went to another place in the meantime is left there.
 */
export function useOpening(autosave: Pick<Autosave, "open">): (id: string) => Promise<string | null> {
  const goOn = useGoOn();
  return async (id) => {
    const pressedAt = window.location.hash;
    const outcome = await autosave.open(id);
    if (outcome !== "open") return outcome === "notKept" ? libraryWords.notKept : libraryWords.cannotOpen;
    if (window.location.hash === pressedAt) goOn();
    return null;
  };
}
