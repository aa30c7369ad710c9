import { isConfirmed, type PadProgress, type TapePart } from "../../app/padProgress";
import type { Correction } from "../../core/plan/corrections";
import type { Plan } from "../../core/plan/plan";
import type { LengthStep } from "../../core/lengthText";
import { remaining, remainingText } from "../readout/remaining";
import type { CorrectionWords } from "../text/learning";

/**
 * The one amount that a correction is told with: what the tape reads over the body at that half, or all round where only
 * the girth was read. What is believed of the half decides what to take off and is not told as a second amount.
 */
export function overTold(
  plan: Plan,
  progress: PadProgress,
  { level, half }: Correction,
  step: LengthStep,
): CorrectionWords["told"] {
  const body = plan.levels.find(({ name }) => name === level)?.body;
  const overAt = (part: TapePart): string | null => {
    const now = progress.now[level][part];
    if (body === undefined || !isConfirmed(now) || remaining(body[part].value, now.value).kind !== "over") return null;
    return remainingText(body[part].value, now.value, step);
  };
  const ofHalf = overAt(half === "front" ? "frontArc" : "backArc");
  if (ofHalf !== null) return { part: half, over: ofHalf };
  const allRound = overAt("girth");
  return allRound === null ? null : { part: "girth", over: allRound };
}
