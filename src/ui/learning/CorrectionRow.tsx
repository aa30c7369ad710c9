import type { PadProgress } from "../../app/padProgress";
import type { Correction } from "../../core/plan/corrections";
import type { Plan } from "../../core/plan/plan";
import { correctionSentence, overSentence } from "../text/learning";
import { useCorrection } from "./useCorrection";

/** One more place that is over, what to do about it, and the patch that notes it down. */
export interface CorrectionRowProps {
  readonly plan: Plan;
  readonly progress: PadProgress;
  readonly correction: Correction;
}

export function CorrectionRow({ plan, progress, correction }: CorrectionRowProps) {
  const atHand = useCorrection(plan, progress, correction);
  if (atHand === null) return null;
  const { words, note } = atHand;
  return (
    <div className="learning-row learning-over">
      <p className="learning-line">
        <span className="learning-mark" aria-hidden />
        {overSentence(words)} <span className="learning-do">{correctionSentence(words)}</span>
      </p>
      {note === null ? null : (
        <button type="button" className="patch" onClick={note.press}>
          {note.name}
          <span className="unseen">: {words.piece}</span>
        </button>
      )}
    </div>
  );
}
