import { useMemo } from "react";
import { coverSupply, notions } from "../../../app/supplies/fittingSupplies";
import type { Plan } from "../../../core/plan/plan";
import { useDerived } from "../useDerived";
import { useFittingState } from "../useStore";
import { useBattingSupplies } from "./useBattingSupplies";
import type { CoverAndNotions } from "./useCoverSupply";

/** The same as on the screen, for paper: worked out at once, because a page that is being printed waits for nothing. */
export function useSuppliesNow(plan: Plan): CoverAndNotions | null {
  const { step, input } = useDerived();
  const supplies = useFittingState(({ fitting }) => fitting.supplies);
  const work = useFittingState(({ fitting }) => fitting.work);
  const unit = useFittingState(({ fitting }) => fitting.unit);
  const battings = useBattingSupplies(plan);
  return useMemo(() => {
    const current = step();
    if (current === null || input === null) return null;
    const chosen = { work, unit, ...(supplies === undefined ? {} : { supplies }) };
    const cover = coverSupply(current, input, chosen);
    return { cover, notions: notions(current, input, chosen, battings, cover) };
  }, [step, input, supplies, work, unit, battings]);
}
