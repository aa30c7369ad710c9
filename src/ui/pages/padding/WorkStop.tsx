import { upperFirst } from "../../../text/upperFirst";
import type { ReactNode } from "react";
import { levelToMeasure } from "../../../app/progress/levelToMeasure";
import { readingsOfPlace } from "../../../app/steps/placeReadings";
import type { MeasurementName } from "../../../core/body/vocabulary";
import type { Plan } from "../../../core/plan/plan";
import { battingWords } from "../../../text/batting";
import type { CautionPlace } from "../../../text/cautions";
import { levelWords } from "../../../text/pictures";
import { featherWords } from "../../../text/pieces";
import { doneWords, firstTrail, handSteps, pieceTrail, stopWords, tapeTrail, tuneWays } from "../../../text/stops";
import { CutOfPiece } from "../../kit/plan/CutOfPiece";
import { Cautions } from "../../kit/Cautions";
import { useCutFrom } from "../../kit/useDerived";
import { IgnoreReadings } from "../../kit/stop/IgnoreReadings";
import { useLengths } from "../../kit/useStore";
import { StackOfPiece } from "./StackOfPiece";
import { StepFrame } from "../../kit/stop/StepFrame";
import { HandSteps } from "../../kit/stop/StopFrame";
import { WorkPictureOf } from "../../kit/stop/WorkPictureOf";
import type { StepAtHand } from "../../kit/stop/useStep";

/** A step of the hands: cut, stacked, pinned, lines carried out, tuned, looked at. One picture, and one slab that notes it. */
export function WorkStop({ at }: { readonly at: StepAtHand }) {
  const { step, record } = at;
  const { step: lengths } = useLengths();
  const feather = featherWords((step.piece?.layers.at(-1)?.feather ?? 10) as number, lengths);
  const said = doneWords(step);
  return (
    <StepFrame
      at={at}
      {...trailOf(at)}
      kind="working"
      picture={pictureOf(at)}
      after={<After at={at} />}
      slab={{ words: said, press: () => record(said), isReady: true }}
      ways={step.do === "tune" ? <TuneWays at={at} /> : null}
    >
      <CareOf at={at} />
      <HandSteps steps={handSteps(step, `${upperFirst(feather)}.`, at.facts)} />
    </StepFrame>
  );
}

/** Where this act stands among those before and after it. */
function trailOf({ step }: StepAtHand): { readonly trail: { readonly [act: string]: string }; readonly act: string } {
  if (step.do in firstTrail) return { trail: firstTrail, act: step.do };
  if (step.do === "build-above") return { trail: tapeTrail, act: "baste" };
  if (step.do === "tune" || step.do === "look") return { trail: tapeTrail, act: step.do };
  const { stack: _, ...short } = pieceTrail;
  return { trail: step.piece?.layers.length === 1 ? short : pieceTrail, act: step.do };
}

function pictureOf({ step, plan, pinned, words }: StepAtHand): ReactNode {
  const { piece } = step;
  const now = piece ?? step.act?.piece ?? null;
  const onForm = { plan, on: pinned, title: words[0] };
  switch (step.do) {
    case "cut":
      return piece === null ? null : <CutOfPiece piece={piece} />;
    case "stack":
      return piece === null ? null : <StackOfPiece piece={piece} />;
    case "carry-lines":
      return <WorkPictureOf {...onForm} doing="carry" now={pinned.filter(({ id }) => step.pieceIds.includes(id))} />;
    case "look":
      return (
        <>
          <WorkPictureOf {...onForm} doing="look" view="front" />
          <WorkPictureOf {...onForm} doing="look" view="side" />
        </>
      );
    default:
      return now === null ? null : <WorkPictureOf {...onForm} doing="pin" now={[now]} />;
  }
}

/** The cautions where the hand is. */
function CareOf({ at: { step, pinned } }: { readonly at: StepAtHand }) {
  const place: CautionPlace | null =
    step.do === "cut" || step.do === "stack"
      ? "cutting"
      : step.do === "pin" || step.do === "tune"
        ? pinned.length === 0
          ? "firstPiece"
          : "laterPiece"
        : step.do === "carry-lines" || step.do === "build-above"
          ? "securing"
          : step.do === "look"
            ? "handlingForm"
            : null;
  return place === null ? null : <Cautions at={place} />;
}

/** What comes after it: what the tape should read, and of two battings which one. */
function After({ at: { step, plan, replan } }: { readonly at: StepAtHand }) {
  const { write } = useLengths();
  const cutFrom = useCutFrom();
  const { piece } = step;
  if (piece === null) return null;
  const from = step.do === "cut" ? cutFrom(piece) : null;
  if (from !== null) return <p className="stop-then">{battingWords.cutFrom(from)}</p>;
  if (step.do !== "pin") return null;
  const has = ({ pieces }: Plan) => pieces.some(({ id }) => id === piece.id);
  const level = levelToMeasure(has(plan) || !has(replan.plan) ? plan : replan.plan, piece);
  return (
    <p className="stop-then">{stopWords.afterwards(levelWords[level], write(piece.readingsAfter[level].girth))}</p>
  );
}

/** Small beside the act: leave it as it is, or ignore the reading that asks for it. */
function TuneWays({ at: { step, fitting, passOver } }: { readonly at: StepAtHand }) {
  const { act } = step;
  if (act === null) return null;
  const { level, half } = act.off;
  const names: readonly MeasurementName[] = [
    half === "front" ? `${level}FrontArc` : `${level}BackArc`,
    `${level}Girth`,
  ];
  const readings = names.flatMap((name) =>
    readingsOfPlace(fitting, name)
      .slice(-1)
      .map(({ at }) => ({ entry: at, name })),
  );
  return (
    <>
      <button type="button" className="patch patch-plain" onClick={() => passOver(tuneWays.leave)}>
        {tuneWays.leave}
      </button>
      {readings.length === 0 ? null : <IgnoreReadings readings={readings} />}
    </>
  );
}
