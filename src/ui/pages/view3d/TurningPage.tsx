import { useEffect, useMemo, useState } from "react";
import type { Plan } from "../../../core/plan/plan";
import { numberedName, placeSentence } from "../../../text/pieces";
import { lookSentence, turningWords } from "../../../text/turning";
import { pageAddress } from "../../kit/page";
import { PlanWaiting } from "../../kit/plan/PlanWaiting";
import { useDerived } from "../../kit/useDerived";
import { touchQuery, useMediaQuery } from "../../kit/useScreen";
import { useLengths } from "../../kit/useStore";
import { TurningCanvas } from "./TurningCanvas";
import { TurningControls, useTurning } from "./TurningControls";
import "./turning.css";
import { turningModel } from "./turningModel";

/** The form to walk round: batting going on piece by piece, and the body as a shell one can see through. */
export function TurningPage() {
  const { planning } = useDerived();
  if (planning.kind === "waiting") return <PlanWaiting />;
  return <TurningBench plan={planning.plan} />;
}

function TurningBench({ plan }: { readonly plan: Plan }) {
  const model = useMemo(() => turningModel(plan.levels, plan.pieces), [plan]);
  const all = plan.pieces.length;
  // Until a piece is put on or taken off, all are on and none is picked out.
  const [stepped, setStepped] = useState<number | null>(null);
  const now = stepped === null ? null : Math.min(stepped, all);
  const count = now ?? all;
  const [body, setBody] = useState<"shown" | "hidden">("shown");
  const turning = useTurning();
  const isTouch = useMediaQuery(touchQuery);
  const { turn, tip } = turning.view;
  return (
    <>
      <div className="place-head">
        <a href={pageAddress("plan")}>{turningWords.backToPlan}</a>
        <h1>{turningWords.title}</h1>
        <p className="lead">{turningWords.lead}</p>
      </div>
      <div className="turning">
        <div
          className="turning-figure"
          role="slider"
          tabIndex={0}
          aria-label={turningWords.figure}
          aria-describedby="turning-how"
          aria-valuemin={0}
          aria-valuemax={360}
          aria-valuenow={Math.round(turn)}
          aria-valuetext={lookSentence(turn, tip)}
          onKeyDown={turning.onKeyDown}
          onPointerDown={turning.onPointerDown}
          onPointerMove={turning.onPointerMove}
          onPointerUp={turning.onPointerUp}
          onPointerCancel={turning.onPointerUp}
        >
          <TurningCanvas model={model} view={turning.view} count={count} now={now} body={body} />
        </div>
        <div className="turning-side stack">
          <TurningControls turning={turning} body={body} onBody={setBody} />
          <TurningPieces plan={plan} count={count} onCount={setStepped} />
          <p id="turning-how">{isTouch ? turningWords.howByTouch : turningWords.how}</p>
          <p className="quiet">
            {turningWords.byRule} {turningWords.guess}
          </p>
          <p>{turningWords.same}</p>
          <a className="patch" href={pageAddress("plan")}>
            {turningWords.toPictures}
          </a>
        </div>
      </div>
    </>
  );
}

/** The pieces going on one by one: by hand, or one every second and a half when asked to. */
interface TurningPiecesProps {
  readonly plan: Plan;
  readonly count: number;
  readonly onCount: (count: number) => void;
}

function TurningPieces({ plan, count, onCount }: TurningPiecesProps) {
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
      <div className="choices">
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
