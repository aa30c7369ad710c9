import { useMemo, useState } from "react";
import type { Plan } from "../../../core/plan/plan";
import { PlanWaiting } from "../../kit/plan/PlanWaiting";
import { placeAddress } from "../../kit/place";
import { lookSentence, turningWords } from "../../../text/turning";
import { useDerived } from "../../kit/useDerived";
import { touchQuery, useMediaQuery } from "../../kit/useMediaQuery";
import { TurningCanvas } from "./TurningCanvas";
import { TurningControls } from "./TurningControls";
import { TurningPieces } from "./TurningPieces";
import { turningModel } from "./turningModel";
import "./turning.css";
import { useTurning } from "./useTurning";

/** The form to walk round: batting going on piece by piece, and the body as a shell one can see through. */
export function TurningPlace() {
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
        <a href={placeAddress("plan")}>{turningWords.backToPlan}</a>
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
          <a className="patch" href={placeAddress("plan")}>
            {turningWords.toPictures}
          </a>
        </div>
      </div>
    </>
  );
}
