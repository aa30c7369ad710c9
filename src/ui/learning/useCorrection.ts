import { useState } from "react";
import type { Command } from "../../app/commands";
import type { PadProgress } from "../../app/padProgress";
import { trimReach } from "../../core/plan/corrected";
import type { Correction } from "../../core/plan/corrections";
import type { Plan } from "../../core/plan/plan";
import { mm } from "../../core/units";
import { amountText } from "../readout/remaining";
import { type CorrectionWords, learningWords } from "../text/learning";
import { thePiece } from "../text/pieces";
import { useDoAndSay } from "../useDone";
import { useLengths } from "../useStore";
import { overTold } from "./overTold";

/** A correction in words, and the press that notes it down; pulling thin is told by the tape alone. */
export interface CorrectionAtHand {
  readonly words: CorrectionWords;
  readonly note: { readonly name: string; readonly press: () => void } | null;
}

export function useCorrection(plan: Plan, progress: PadProgress, correction: Correction): CorrectionAtHand | null {
  const { step } = useLengths();
  const doAndSay = useDoAndSay();
  // Until what was noted is worked out the correction stands, but it is noted once.
  const [noted, setNoted] = useState<Correction | null>(null);
  const piece = plan.pieces.find(({ id }) => id === correction.pieceId);
  if (piece === undefined) return null;
  const { how } = correction;
  const words: CorrectionWords = {
    level: correction.level,
    half: correction.half,
    piece: thePiece(piece),
    told: overTold(plan, progress, correction, step),
    how:
      how.kind === "trim"
        ? { kind: "trim", eachSide: amountText(how.eachSide, step), reach: amountText(mm(trimReach), step) }
        : how,
  };
  if (how.kind === "pullThin" || noted === correction) return { words, note: null };
  const press = () => {
    const isDone = doAndSay(commandOf(correction, how, new Date().toISOString()), learningWords.logged);
    if (isDone) setNoted(correction);
  };
  return { words, note: { name: how.kind === "peel" ? learningWords.peeled : learningWords.trimmed, press } };
}

function commandOf(
  { pieceId, level }: Correction,
  how: Exclude<Correction["how"], { readonly kind: "pullThin" }>,
  at: string,
): Command {
  return how.kind === "peel"
    ? { does: "unpin", pieceId, at }
    : { does: "trim", pieceId, level, eachSideMm: how.eachSide, at };
}
