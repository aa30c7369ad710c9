import { useEffect, useState } from "react";
import type { OpenedFitting } from "../../../app/storage/fittingOutcome";
import type { FittingEntry } from "../../../app/storage/fittingRecord";
import type { FittingStorage } from "../../../app/storage/fittingStorage";
import type { Fitting } from "../../../document/fitting";

/** A fitting of the list with what it says, which is read only when it is asked for. */
export type OpenedEntry = Extract<OpenedFitting, { readonly kind: "fitting" }>;

/** Null where it cannot be read after all, or is not there any more. */
export async function openedEntry(storage: FittingStorage, id: string): Promise<OpenedEntry | null> {
  const read = await storage.read([id]);
  const [found] = read.kind === "read" ? read.fittings : [];
  return found?.kind === "fitting" ? found : null;
}

/** What a fitting of the list says, as soon as it has been read. */
export function useOpened(storage: FittingStorage, { id, revision }: FittingEntry): Fitting | null {
  const [fitting, setFitting] = useState<Fitting | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new revision is the reason to read again.
  useEffect(() => {
    let isStale = false;
    void openedEntry(storage, id).then((opened) => {
      if (!isStale) setFitting(opened?.fitting ?? null);
    });
    return () => {
      isStale = true;
    };
  }, [storage, id, revision]);
  return fitting;
}
