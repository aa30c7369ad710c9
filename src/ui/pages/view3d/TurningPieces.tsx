import { useEffect, useState } from "react";
import type { Plan } from "../../../core/plan/plan";
import { numberedName, placeSentence } from "../../../text/pieces";
import { turningWords } from "../../../text/turning";
import { useLengths } from "../../kit/useStore";

/** The pieces going on one by one: by hand, or one every second and a half when asked to. */
export interface TurningPiecesProps {
  readonly plan: Plan;
  readonly count: number;
  readonly onCount: (count: number) => void;
}

export function TurningPieces({ plan, count, onCount }: TurningPiecesProps) {
  const { step } = useLengths();
  const all = plan.pieces.length;
  const [pace, setPace] = useState<"still" | "playing">("still");
  const isPlaying = pace === "playing" && count < all;

  useEffect(() => {
    if (!isPlaying) return undefined;
    const timer = window.setTimeout(() => onCount(count + 1), piecePause);
    return () => window.clearTimeout(timer);
  }, [isPlaying, count, onCount]);

  const play = () => {
    if (isPlaying) return setPace("still");
    if (count === all) onCount(0);
    setPace("playing");
  };
  const byHand = (next: number) => {
    setPace("still");
    onCount(Math.max(0, Math.min(all, next)));
  };
  const piece = plan.pieces[count - 1];
  return (
    <section className="turning-pieces stack" aria-label={turningWords.pieces}>
      <p className="turning-count">{turningWords.countOn(count, all)}</p>
      <p className="turning-piece" role="status">
        {piece === undefined
          ? turningWords.bareForm
          : `${numberedName(piece)}. ${placeSentence(piece, plan.levels, step)}`}
      </p>
      <div className="turning-row">
        <button type="button" className="patch" disabled={count === 0} onClick={() => byHand(count - 1)}>
          {turningWords.earlier}
        </button>
        <button type="button" className="patch" disabled={count === all} onClick={() => byHand(count + 1)}>
          {turningWords.later}
        </button>
        <button type="button" className="patch" disabled={count === 0} onClick={() => byHand(0)}>
          {turningWords.bare}
        </button>
        <button type="button" className="patch" disabled={count === all} onClick={() => byHand(all)}>
          {turningWords.all}
        </button>
        <button type="button" className="patch" disabled={all === 0} onClick={play}>
          {isPlaying ? turningWords.pause : turningWords.play}
        </button>
      </div>
    </section>
  );
}

/** Long enough to see where a piece went and read its name (ms). */
const piecePause = 1500;
