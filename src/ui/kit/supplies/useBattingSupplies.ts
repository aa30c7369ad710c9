import { useMemo } from "react";
import { type BattingSupply, battingSupplies } from "../../../app/supplies/fittingSupplies";
import type { Plan } from "../../../core/plan/plan";
import { useFittingState, useUnit } from "../useStore";

/** Every batting of a plan with the layers that are still to be cut, laid on what it is bought as. */
export function useBattingSupplies(plan: Plan): readonly BattingSupply[] {
  const unit = useUnit();
  const work = useFittingState(({ fitting }) => fitting.work);
  const supplies = useFittingState(({ fitting }) => fitting.supplies);
  return useMemo(
    () => battingSupplies(plan, { unit, work, ...(supplies === undefined ? {} : { supplies }) }),
    [plan, unit, work, supplies],
  );
}
