import { useEffect, useState } from "react";
import type { CoverCloth } from "../../../app/supplies/coverCloth";
import { coverSupply, type Notions, notions } from "../../../app/supplies/fittingSupplies";
import type { BattingSupply } from "../../../app/supplies/fittingSupplies";
import { useAnswer } from "../useAnswer";
import { useDerived } from "../useDerived";
import { useFittingState } from "../useStore";

export interface CoverAndNotions {
  /** Null where there is to be none. */
  readonly cover: CoverCloth | null;
  readonly notions: Notions;
}

/** The cover for where the work stands, and what else is needed: worked out once the screen is there. */
export function useCoverSupply(battings: readonly BattingSupply[]): CoverAndNotions | null {
  const { answer: step } = useAnswer("step");
  const { input } = useDerived();
  const supplies = useFittingState(({ fitting }) => fitting.supplies);
  const work = useFittingState(({ fitting }) => fitting.work);
  const unit = useFittingState(({ fitting }) => fitting.unit);
  const [found, setFound] = useState<CoverAndNotions | null>(null);
  useEffect(() => {
    if (step === null || input === null) return;
    const chosen = { work, unit, ...(supplies === undefined ? {} : { supplies }) };
    const timer = setTimeout(() => {
      const cover = coverSupply(step, input, chosen);
      setFound({ cover, notions: notions(step, input, chosen, battings, cover) });
    }, afterPaint);
    return () => clearTimeout(timer);
  }, [step, input, supplies, work, unit, battings]);
  return found;
}

/** Until the screen shows what was pressed (ms). */
const afterPaint = 40;
