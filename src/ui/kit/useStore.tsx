import { createContext, type ReactNode, useContext, useMemo } from "react";
import { useStore as useZustand } from "zustand";
import type { Command, DraftOwner } from "../../app/session/commands";
import type { FittingState, FittingStore } from "../../app/session/store";
import type { LengthStep, LengthUnit } from "../../core/lengthText";
import type { Millimetres } from "../../core/units";
import type { Drafts, SettledFitting } from "../../document/fitting";
import { remembered } from "../../app/session/remembered";
import { lengthStepOf, shownLength } from "../../text/shownLength";
import { useSoon } from "./useSoon";

/** How the screens reach the store: the fitting and the way to change it. What follows from it is in `useDerived`. */
const StoreContext = createContext<FittingStore | null>(null);

export function StoreProvider({ store, children }: { readonly store: FittingStore; readonly children: ReactNode }) {
  return <StoreContext value={store}>{children}</StoreContext>;
}

export function useStoreItself(): FittingStore {
  const store = useContext(StoreContext);
  if (store === null) throw new Error("Broken promise in the screens: no store was handed in");
  return store;
}

export function useFittingState<Part>(pick: (state: FittingState) => Part): Part {
  return useZustand(useStoreItself(), pick);
}

/** The open fitting without the texts that are being typed: the same one as long as only those change. */
export const useFitting = (): SettledFitting => useFittingState(settledOf(useStoreItself()));

/** The texts that are being typed. */
export const useDrafts = (): Drafts => useFittingState(draftsOf);

/** The one text that is being typed here, letter by letter. */
export const useDraft = (of: DraftOwner, key: string): string | undefined =>
  useFittingState((state) => draftsOf(state)[of][key]);

/** The texts that are being typed, for whatever stands beside the field: a letter shows in its field a frame before. */
export const useDraftsSoon = (): Drafts => useSoon(useStoreItself(), draftsOf, isLetter);

const draftsOf = (state: FittingState): Drafts => state.fitting.drafts;
const isLetter = ({ cause }: FittingState): boolean => cause === "draft";

const settled = new WeakMap<FittingStore, (state: FittingState) => SettledFitting>();

function settledOf(store: FittingStore): (state: FittingState) => SettledFitting {
  const known = settled.get(store);
  if (known) return known;
  const pick = remembered(
    ({ fitting: { drafts: _, ...parts } }: FittingState) => Object.values(parts),
    ({ fitting }): SettledFitting => fitting,
  );
  settled.set(store, pick);
  return pick;
}

export const useUnit = (): LengthUnit => useFittingState((state) => state.fitting.unit);

export const useDispatch = (): ((command: Command) => void) => useStoreItself().dispatch;

/** Lengths in the person's own unit and at the step the tape is read to; `write` is for words that are shown. */
export interface LengthWords {
  readonly unit: LengthUnit;
  readonly step: LengthStep;
  readonly write: (length: Millimetres) => string;
}

export function useLengths(): LengthWords {
  const unit = useUnit();
  const roundInches = useFittingState((state) => state.fitting.settings.roundInches);
  return useMemo(() => {
    const step = lengthStepOf(unit, roundInches);
    return { unit, step, write: (length) => shownLength(length, step) };
  }, [unit, roundInches]);
}
