import { useEffect, useState } from "react";
import type { DeviceSettings } from "../../app/storage/deviceSettings";
import type { ListedFitting, ListOutcome, NotRead } from "../../app/storage/fittingOutcome";
import type { Keeping } from "../../app/storage/keeping";
import type { QuarantinedItem } from "../../app/storage/quarantine";
import { lookForGone } from "./lookForGone";
import { useShelf } from "./shelf";

/** Everything that lies on the shelf, read anew whenever it may have changed. */
export interface Listing {
  readonly fittings: readonly ListedFitting[];
  readonly setAside: readonly QuarantinedItem[];
  readonly settings: DeviceSettings;
}

export type FoundListing =
  | { readonly kind: "listed"; readonly listing: Listing }
  | { readonly kind: "looking" }
  | NotRead;

export function useListing(keeping: Keeping): FoundListing {
  const { storage } = keeping.desk;
  const turn = useShelf((state) => state.turn);
  const [found, setFound] = useState<FoundListing>({ kind: "looking" });
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new turn is the reason to look again.
  useEffect(() => {
    let isStale = false;
    void Promise.all([storage.list(), storage.quarantined(), storage.settings()]).then(([listed, aside, settings]) => {
      if (!isStale) setFound(together(listed, aside.kind === "listed" ? aside.items : [], settings));
      void lookForGone(keeping);
    });
    return () => {
      isStale = true;
    };
  }, [keeping, storage, turn]);
  return found;
}

const together = (listed: ListOutcome, setAside: readonly QuarantinedItem[], settings: DeviceSettings): FoundListing =>
  listed.kind === "listed"
    ? { kind: "listed", listing: { fittings: newestFirst(listed.fittings), setAside, settings } }
    : listed;

const newestFirst = (fittings: readonly ListedFitting[]): readonly ListedFitting[] =>
  fittings.toSorted((one, other) => (changeOf(one) < changeOf(other) ? 1 : -1));

const changeOf = (listed: ListedFitting): string => (listed.kind === "fitting" ? listed.entry.changedAt : "");
