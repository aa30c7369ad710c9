import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import type { OfflineState } from "../../../app/offline/offlineState";
import type { FoundBySave } from "../../../app/storage/fittingOutcome";
import type { Autosave } from "../../../app/storage/autosave";
import type { KnownFitting } from "../../../app/storage/knownFittings";
import type { OpenState } from "../../../app/storage/openFitting";
import type { Fitting } from "../../../document/fitting";

/**
 * What the screens know of keeping: the open fitting and how far it is kept, what a person should be told, and
 * whether the tool opens without a network. Everything that does the keeping is loaded after the first screen.
 */
export interface ShelfState {
  /** Null until the database has been opened, and for good where the keeping could not be loaded. */
  readonly autosave: Autosave | null;
  readonly open: OpenState | null;
  readonly offline: OfflineState;
  readonly takeNewRelease: () => void;
  /** What happened that the person did not do; the newest last. */
  readonly news: readonly ShelfNews[];
  /** Counts up whenever the list may have changed, in this tab or another. */
  readonly turn: number;
}

export type ShelfNews =
  /** These fittings were kept here, were not erased, and are no longer here. */
  | { readonly kind: "gone"; readonly fittings: readonly KnownFitting[] }
  /** A newer release of the tool, in another tab, has taken over the database. */
  | { readonly kind: "outdated" }
  | { readonly kind: "received" }
  /** A link brought a fitting while another one was being worked on. */
  | { readonly kind: "linkWaits"; readonly fitting: Fitting }
  | { readonly kind: "linkAdded" }
  | { readonly kind: "linkNotAdded" }
  | { readonly kind: "linkRefused"; readonly problem: LinkRefusal }
  /** The last fitting could not be opened; it is in the list, with its raw text. */
  | { readonly kind: "lastUnreadable" }
  /** The last fitting made a page fail, so it was not opened again by itself. */
  | { readonly kind: "lastFailed" }
  /** The last fitting was kept by a newer release and is not understood at all. */
  | { readonly kind: "lastNewer" }
  /** A save found something else than what was kept there before. */
  | { readonly kind: FoundBySave }
  /** Something else was to be opened, and what lies there is not kept yet. */
  | { readonly kind: "tableNotKept" }
  | { readonly kind: "historyLost" }
  | { readonly kind: "notLoaded" };

type LinkRefusal = "notALink" | "tooLong" | "newerLink" | "damaged" | "cannotUnpack" | "badFitting";

export const shelf = createStore<ShelfState>(() => ({
  autosave: null,
  open: null,
  offline: { kind: "preparing" },
  takeNewRelease: () => {},
  news: [],
  turn: 0,
}));

export const useShelf = <Part>(pick: (state: ShelfState) => Part): Part => useStore(shelf, pick);

export const tell = (news: ShelfNews): void =>
  shelf.setState(({ news: before }) => ({ news: [...before.filter(({ kind }) => kind !== news.kind), news] }));

export const forget = (kind: ShelfNews["kind"]): void =>
  shelf.setState(({ news }) => ({ news: news.filter((one) => one.kind !== kind) }));

export const listMayHaveChanged = (): void => shelf.setState(({ turn }) => ({ turn: turn + 1 }));

/** Loads the page anew, and never overtakes a save: what was typed in the last moment is kept first. */
export function reloadWhenKept(reload: () => void = () => window.location.reload()): void {
  if (isAtRest(shelf.getState())) {
    reload();
    return;
  }
  const stop = shelf.subscribe((state) => {
    if (!isAtRest(state)) return;
    stop();
    reload();
  });
}

const isAtRest = ({ open }: ShelfState): boolean => open === null || restingStates.has(open.saving.kind);

const restingStates: ReadonlySet<string> = new Set(["saved", "nothingYet"]);
