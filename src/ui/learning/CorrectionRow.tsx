import { useState } from "react";
import type { Command } from "../../app/commands";
import { trimReach } from "../../core/plan/corrected";
import type { Correction } from "../../core/plan/corrections";
import type { Plan, PlannedPiece } from "../../core/plan/plan";
import { mm } from "../../core/units";
import { useAnnounce } from "../Announcer";
import { formatRemaining } from "../readout/remaining";
import { type CorrectionWords, correctionSentence, learningWords, overSentence } from "../text/learning";
import { pieceName } from "../text/pieces";
import { type LengthWords, useDispatch, useLengths } from "../useStore";

/** One place that is over, what to do about it, and the patch that notes it down; pulling thin is told by the tape alone. */
export interface CorrectionRowProps {
  readonly plan: Plan;
  readonly correction: Correction;
  readonly onDone?: () => void;
}

export function CorrectionRow({ plan, correction, onDone }: CorrectionRowProps) {
  const lengths = useLengths();
  const dispatch = useDispatch();
  const announce = useAnnounce();
  // Until what was noted is worked out the row stands, but it is noted once.
  const [logged, setLogged] = useState<Correction | null>(null);
  const piece = plan.pieces.find(({ id }) => id === correction.pieceId);
  if (piece === undefined) return null;
  const words = wordsOf(correction, piece, lengths);
  const { how } = correction;
  const log = () => {
    if (how.kind === "pullThin") return;
    setLogged(correction);
    dispatch(commandOf(correction, how, new Date().toISOString()));
    announce(learningWords.logged);
    onDone?.();
  };
  return (
    <div className="learning-row learning-over">
      <p className="learning-line">
        <span className="learning-mark" aria-hidden />
        {overSentence(words)} <span className="learning-do">{correctionSentence(words)}</span>
      </p>
      {how.kind === "pullThin" || logged === correction ? null : (
        <button type="button" className="patch" onClick={log}>
          {how.kind === "peel" ? learningWords.peeled : learningWords.trimmed}
          <span className="unseen">: {words.piece}</span>
        </button>
      )}
    </div>
  );
}

function wordsOf(
  { level, half, over, how }: Correction,
  piece: PlannedPiece,
  { unit, step }: LengthWords,
): CorrectionWords {
  return {
    level,
    half,
    over: formatRemaining(over, unit),
    piece: pieceName(piece, step),
    how:
      how.kind === "trim"
        ? { kind: "trim", eachSide: formatRemaining(how.eachSide, unit), reach: formatRemaining(mm(trimReach), unit) }
        : how,
  };
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
