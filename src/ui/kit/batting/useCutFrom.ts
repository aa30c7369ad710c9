import { useMemo } from "react";
import { type CutFrom, cutFrom } from "../../../text/batting";
import { useFittingState } from "../useStore";

/** Says of a piece of this fitting which batting it is cut from. */
export function useCutFrom(): CutFrom {
  const building = useFittingState(({ fitting }) => fitting.batting.name);
  const finishing = useFittingState(({ fitting }) => fitting.finishingBatting?.name ?? null);
  return useMemo(() => cutFrom(building, finishing), [building, finishing]);
}
