import { useMemo } from "react";
import { derivation, type Derived } from "../../app/session/derived";
import type { FittingStore } from "../../app/session/store";
import type { SettledFitting } from "../../document/fitting";
import { type CutFrom, cutFrom } from "../../text/batting";
import { useFitting, useFittingState, useStoreItself } from "./useStore";

/**
 * What follows from the open fitting: problems, plan, progress. All screens of one store share the same
 * derivation, which remembers; the planner comes with the first place of work and not with Home.
 */
export function useDerived(): Derived {
  return derivationOf(useStoreItself())(useFitting());
}

const derivations = new WeakMap<FittingStore, (fitting: SettledFitting) => Derived>();

export function derivationOf(store: FittingStore): (fitting: SettledFitting) => Derived {
  const known = derivations.get(store);
  if (known) return known;
  const made = derivation();
  derivations.set(store, made);
  return made;
}

/** Says of a piece of this fitting which batting it is cut from. */
export function useCutFrom(): CutFrom {
  const building = useFittingState(({ fitting }) => fitting.batting.name);
  const finishing = useFittingState(({ fitting }) => fitting.finishingBatting?.name ?? null);
  return useMemo(() => cutFrom(building, finishing), [building, finishing]);
}
