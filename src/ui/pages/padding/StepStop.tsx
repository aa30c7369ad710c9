import { upperFirst } from "../../../text/upperFirst";
import type { CurrentStep } from "../../../app/steps/currentStep";
import { partOfStep } from "../../../app/steps/jobPart";
import { plannedChanges } from "../../../app/steps/planAnew";
import type { Piece } from "../../../core/padding/piece";
import type { PlannedPiece } from "../../../core/plan/plan";
import { learningWords } from "../../../text/learning";
import { layerCount, pinSentence } from "../../../text/pieces";
import { planWords } from "../../../text/plan";
import { changeWords, doneWords, planAnewStop, planTrail, stopWords } from "../../../text/stops";
import { useDoAndSay } from "../../kit/shelf/useDone";
import { useLengths } from "../../kit/useStore";
import { AboveStop } from "./AboveStop";
import { BasteStop } from "./BasteStop";
import { PaddedStop } from "./PaddedStop";
import { MeasureStop } from "../../kit/stop/MeasureStop";
import { PrepareStop } from "./PrepareStop";
import { TrialStop } from "./TrialStop";
import { StepFrame } from "../../kit/stop/StepFrame";
import { StopFrame } from "../../kit/stop/StopFrame";
import { TwiceStop } from "./TwiceStop";
import { WorkPictureOf } from "../../kit/stop/WorkPictureOf";
import { WorkStop } from "./WorkStop";
import { type StepAtHand, useStepAtHand } from "../../kit/stop/useStep";

interface StepStopProps {
  readonly current: CurrentStep;
  readonly isWorking: boolean;
  readonly looked: Piece | null;
  readonly onBack: () => void;
}

/** The stop of the one next step, or of a piece that is looked at meanwhile. */
export function StepStop({ current, isWorking, looked, onBack }: StepStopProps) {
  const at = useStepAtHand(current, isWorking);
  const { step, plan } = at;
  if (looked !== null) return <PieceLook at={at} piece={looked} onBack={onBack} />;
  if (partOfStep[step.do] !== "padding") return <PaddedStop at={at} />;
  switch (step.do) {
    case "prepare-form":
      return <PrepareStop plan={plan} later={null} />;
    case "trial":
      return <TrialStop at={at} />;
    case "read":
    case "read-all":
    case "check":
      return step.isTwice ? <TwiceStop key={`${step.do} ${step.names.join()}`} at={at} /> : <MeasureStop at={at} />;
    case "plan-anew":
      return <PlanAnewStop at={at} />;
    case "baste":
      return <BasteStop at={at} />;
    case "build-above":
    case "correct-above":
      return step.build?.act.what === "layers" ? (
        <AboveStop key={`${step.do} ${step.build.id} ${at.fitting.work.length}`} at={at} build={step.build} />
      ) : (
        <WorkStop at={at} />
      );
    default:
      return <WorkStop at={at} />;
  }
}

interface PieceLookProps {
  readonly at: StepAtHand;
  readonly piece: Piece;
  readonly onBack: () => void;
}

/** Another piece, looked at from the route: the step does not change by it. */
function PieceLook({ at: { plan, pinned }, piece, onBack }: PieceLookProps) {
  const { step } = useLengths();
  const doAndSay = useDoAndSay();
  const isOn = pinned.some(({ id }) => id === piece.id);
  const place = planWords(step).piecePlace(piece as PlannedPiece, plan.levels);
  const takeOff = () => {
    doAndSay(
      { does: "record", entry: { did: "unpinned", pieceId: piece.id, at: new Date().toISOString() } },
      stopWords.takenOff,
    );
    onBack();
  };
  return (
    <StopFrame
      region={stopWords.region}
      trail={{}}
      act="look-at"
      kind="working"
      title={pinSentence(piece)}
      sentence={`${upperFirst(place)}, ${layerCount(piece.layers.length)}.`}
      picture={<WorkPictureOf plan={plan} on={pinned} now={[piece]} doing="pin" title={pinSentence(piece)} />}
      slab={{ words: stopWords.back, press: onBack, isReady: true }}
      ways={
        isOn ? (
          <button type="button" className="patch patch-plain" onClick={takeOff}>
            {stopWords.takeOff}
          </button>
        ) : null
      }
    >
      <p>{stopWords.lookedAt}</p>
    </StopFrame>
  );
}

/** Before the remaining pieces are updated: which of them stay, which change, which are new or not needed any more. */
function PlanAnewStop({ at }: { readonly at: StepAtHand }) {
  const { step, plan, replan, pinned, words, record, fitting } = at;
  const changes = plannedChanges(at, fitting);
  const moving = changes.filter(({ fate }) => fate === "isNew" || fate === "changes").map(({ piece }) => piece);
  return (
    <StepFrame
      at={at}
      trail={planTrail}
      act="plan-anew"
      kind="working"
      picture={
        <WorkPictureOf
          plan={plan}
          on={pinned}
          now={moving.length > 0 ? moving : replan.plan.pieces}
          doing="plan"
          title={words[0]}
        />
      }
      slab={{ words: doneWords(step), press: () => record(learningWords.replanned), isReady: true }}
      ways={null}
    >
      <p>{planAnewStop.pinned(pinned.length)}</p>
      {changes.length === 0 ? (
        <p>{planAnewStop.none}</p>
      ) : (
        <ul className="changes" aria-label={planAnewStop.list}>
          {changes.map((change) => {
            const [name, fate] = changeWords(change);
            return (
              <li key={`${change.piece.id} ${change.fate}`} className={`change change-${change.fate}`}>
                <strong>{name}</strong> <span>{fate}</span>
              </li>
            );
          })}
        </ul>
      )}
    </StepFrame>
  );
}
