import type { PadProgress } from "../../app/padProgress";
import type { Correction } from "../../core/plan/corrections";
import type { Plan } from "../../core/plan/plan";
import { useCorrection } from "../learning/useCorrection";
import { correctionSentence, overSentence } from "../text/learning";
import { paddingWords } from "../text/padding";
import { levelWords } from "../text/pictures";
import { SpeakButton } from "./SpeakButton";

/** The tape reads over the body: that comes before any further piece, so it takes the place of the next action. */
export interface OverActionProps {
  readonly plan: Plan;
  readonly progress: PadProgress;
  readonly correction: Correction;
  readonly onNoted: () => void;
  /** To the next piece all the same; null where every piece is on. */
  readonly onLeave: (() => void) | null;
}

export function OverAction({ plan, progress, correction, onNoted, onLeave }: OverActionProps) {
  const atHand = useCorrection(plan, progress, correction);
  if (atHand === null) return null;
  const { words, note } = atHand;
  const [over, what, then] = [
    overSentence(words),
    correctionSentence(words),
    paddingWords.thenRead(levelWords[words.level]),
  ];
  return (
    <>
      <h2 className="next-sentence">
        <span className="learning-mark" aria-hidden />
        {over}
      </h2>
      <p className="next-place">{what}</p>
      <p className="next-then">{then}</p>
      <div className="row next-buttons">
        {note === null ? null : (
          <button
            type="button"
            className="patch patch-main"
            onClick={() => {
              note.press();
              onNoted();
            }}
          >
            {note.name}
            <span className="unseen">: {words.piece}</span>
          </button>
        )}
        {onLeave === null ? null : (
          <button type="button" className="patch" onClick={onLeave}>
            {paddingWords.goOn}
          </button>
        )}
        <SpeakButton sentence={[over, what, then].join(" ")} />
      </div>
    </>
  );
}
