import { useMemo } from "react";
import { outermostLayer } from "../../../core/padding/piece";
import type { Plan } from "../../../core/plan/plan";
import { useCutFrom } from "../batting/useCutFrom";
import { lengthWriter } from "../../drawing/lengthWriter";
import { featherWords, numberedName } from "../../../text/pieces";
import { cuttingSheetWords } from "../../../text/printing";
import { useLengths } from "../useStore";
import { type CutCard, cutCards } from "./cutPages";

/** The small cut drawing of every piece, with its name and how many to cut. */
export function useSmallCards(plan: Plan): readonly CutCard[] {
  const { unit, step } = useLengths();
  const cutFrom = useCutFrom();
  return useMemo(
    () =>
      plan.pieces.flatMap((piece) =>
        cutCards(
          piece,
          numberedName(piece),
          cuttingSheetWords.howMany(
            piece.layers.length,
            cutFrom(piece),
            featherWords(outermostLayer(piece).feather, step),
          ),
          lengthWriter(unit, step),
          "paper",
        ),
      ),
    [plan, step, unit, cutFrom],
  );
}
