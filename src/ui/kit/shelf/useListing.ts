import { useEffect, useState } from "react";
import type { DeviceSettings } from "../../../app/storage/deviceSettings";
import type { ListedFitting, ListOutcome, NotRead } from "../../../app/storage/fittingOutcome";
import type { Autosave } from "../../../app/storage/autosave";
import type { QuarantinedItem } from "../../../app/storage/quarantine";
import { forget, tell, useShelf } from "./shelf";

/** Everything that lies on the shelf, read anew whenever it may have changed. */
export interface Listing {
  readonly fittings: readonly ListedFitting[];
  /** So many more are being read. */
  readonly toCome: number;
  readonly setAside: readonly QuarantinedItem[];
  readonly settings: DeviceSettings;
}

type FoundListing = { readonly kind: "listed"; readonly listing: Listing } | { readonly kind: "looking" } | NotRead;

export function useListing(autosave: Autosave): FoundListing {
  const { storage } = autosave.context;
  const turn = useShelf((state) => state.turn);
  const [found, setFound] = useState<FoundListing>({ kind: "looking" });
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new turn is the reason to look again.
  useEffect(() => {
    let isStale = false;
    const look = async () => {
      const beside = Promise.all([storage.quarantined(), storage.settings()]);
      const show = async (listed: ListOutcome, toCome: number) => {
        const [aside, settings] = await beside;
        if (!isStale) setFound(together(listed, toCome, aside.kind === "listed" ? aside.items : [], settings));
      };
      await show(await storage.list((fittings, toCome) => void show({ kind: "listed", fittings }, toCome)), 0);
      void lookForGone(autosave);
    };
    void look();
    return () => {
      isStale = true;
    };
  }, [autosave, storage, turn]);
  return found;
}

const together = (
  listed: ListOutcome,
  toCome: number,
  setAside: readonly QuarantinedItem[],
  settings: DeviceSettings,
): FoundListing =>
  listed.kind === "listed"
    ? { kind: "listed", listing: { fittings: newestFirst(listed.fittings), toCome, setAside, settings } }
    : listed;

const newestFirst = (fittings: readonly ListedFitting[]): readonly ListedFitting[] =>
  fittings.toSorted((one, other) => (changeOf(one) < changeOf(other) ? 1 : -1));

const changeOf = (listed: ListedFitting): string => (listed.kind === "fitting" ? listed.entry.changedAt : "");

/** Tells which fittings are lost, if any are, and stops telling it once they are back. */
export async function lookForGone(autosave: Autosave): Promise<void> {
  const fittings = await autosave.lost();
  if (fittings === null) return;
  if (fittings.length > 0) tell({ kind: "gone", fittings });
  else forget("gone");
}
