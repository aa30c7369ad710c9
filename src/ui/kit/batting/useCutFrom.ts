import { useMemo } from "react";
import { type Piece, pieceBatting } from "../../../core/padding/piece";
import { twoBattingNames } from "../../../text/batting";
import { useFittingState } from "../useStore";

/** Says of a piece which batting it is cut from; null where there is only one, because then there is nothing to choose. */
export type CutFrom = (piece: Pick<Piece, "layers">) => string | null;

export function useCutFrom(): CutFrom {
  const building = useFittingState(({ fitting }) => fitting.batting.name);
  const finishing = useFittingState(({ fitting }) => fitting.finishingBatting?.name ?? null);
  return useMemo((): CutFrom => {
    if (finishing === null) return () => null;
    const names = twoBattingNames(building, finishing);
    return (piece) => names[pieceBatting(piece)];
  }, [building, finishing]);
}
