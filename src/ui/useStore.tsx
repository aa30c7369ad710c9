import { createContext, type ReactNode, useContext, useMemo } from "react";
import { useStore as useZustand } from "zustand";
import type { Command } from "../app/commands";
import { type Derived, derivation } from "../app/derived";
import type { FittingState, FittingStore } from "../app/store";
import { formatLength, type LengthStep, type LengthUnit } from "../core/lengthText";
import type { Millimetres } from "../core/units";
import type { Fitting } from "../document/fitting";
import { lengthStepOf } from "./lengthStep";

/** How the screens reach the store: the fitting, what follows from it, and the way to change it. */
interface Bench {
  readonly store: FittingStore;
  readonly derive: (fitting: Fitting) => Derived;
}

const BenchContext = createContext<Bench | null>(null);

export function StoreProvider({ store, children }: { readonly store: FittingStore; readonly children: ReactNode }) {
  const bench = useMemo(() => ({ store, derive: derivation() }), [store]);
  return <BenchContext value={bench}>{children}</BenchContext>;
}

function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (bench === null) throw new Error("Broken promise in the screens: no store was handed in");
  return bench;
}

export function useFittingState<Part>(pick: (state: FittingState) => Part): Part {
  return useZustand(useBench().store, pick);
}

export const useFitting = (): Fitting => useFittingState((state) => state.fitting);

export const useUnit = (): LengthUnit => useFittingState((state) => state.fitting.unit);

export const useDispatch = (): ((command: Command) => void) => useBench().store.dispatch;

export const useStoreItself = (): FittingStore => useBench().store;

export function useDerived(): Derived {
  const { store, derive } = useBench();
  return derive(useZustand(store, (state) => state.fitting));
}

/** Lengths in the person's own unit and at the step the tape is read to. */
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
    return { unit, step, write: (length) => formatLength(length, step) };
  }, [unit, roundInches]);
}
