import type { Autosave } from "../../../app/storage/autosave";
import { libraryWords } from "../../../text/library";
import { useGoOn } from "../useGoOn";

/** Opens a kept fitting where its work stands; what comes back is null then, and otherwise the sentence that says why not. */
export function useOpening(autosave: Autosave): (id: string) => Promise<string | null> {
  const goOn = useGoOn();
  return async (id) => {
    const outcome = await autosave.open(id);
    if (outcome !== "open") return outcome === "notKept" ? libraryWords.notKept : libraryWords.cannotOpen;
    goOn();
    return null;
  };
}
