import { type ReactNode, useMemo } from "react";
import type { CurrentStep } from "../../../app/steps/currentStep";
import { makingOfStep } from "../../../app/steps/makingSteps";
import { type StepName, step } from "../../../app/steps/step";
import type { CautionPlace } from "../../../text/cautions";
import { finishingWords } from "../../../text/finishing";
import { armStep, makingThen } from "../../../text/makingSteps";
import { doneWords, handSteps } from "../../../text/stops";
import { Cautions } from "../../kit/Cautions";
import { goTo } from "../../kit/page";
import { MeasureStop } from "../../kit/stop/MeasureStop";
import { StepFrame } from "../../kit/stop/StepFrame";
import { HandSteps } from "../../kit/stop/StopFrame";
import { type StepAtHand, useStepAtHand } from "../../kit/stop/useStep";
import { useLengths } from "../../kit/useStore";
import { ArmFold } from "./ArmChoice";
import { BetweenStop } from "./BetweenStop";
import { CoverChoice } from "./CoverChoice";
import { MakingPicture } from "./MakingPicture";
import { SidesStop } from "./SidesStop";
import { WaistTapeStop } from "./WaistTapeStop";
import { writtenLength } from "../../../text/writtenLength";

interface MakingStopProps {
  readonly current: CurrentStep;
  readonly isWorking: boolean;
}

/** The stop of a step over the finished padding. */
export function MakingStop({ current, isWorking }: MakingStopProps) {
  const at = useStepAtHand(current, isWorking);
  const { step } = at;
  switch (step.do) {
    case "read-cover":
      return <MeasureStop at={at} />;
    case "choose-cover":
      return <CoverChoice at={at} />;
    case "read-between":
      return <BetweenStop at={at} />;
    case "close-cover":
    case "correct-cover":
      return <SidesStop key={step.do} at={at} ways={<LeaveOut at={at} />} />;
    case "waist-tape":
      return at.facts.cloth === "none" ? (
        <HandsStop at={at} />
      ) : (
        <WaistTapeStop at={at} after={<Then at={at} />} ways={<LeaveOut at={at} />} />
      );
    default:
      return <HandsStop at={at} />;
  }
}

/** A cover chosen after there was none. */
export function CoverAfterAll({ current, isWorking, onEnd }: MakingStopProps & { readonly onEnd: () => void }) {
  const choice = useMemo(() => ({ ...current, step: step("choose-cover") }), [current]);
  return <CoverChoice at={useStepAtHand(choice, isWorking)} again={{ onEnd }} />;
}

/** Made by hand: one picture, what the hands do in order, and one slab that notes it. It may be left out. */
function HandsStop({ at }: { readonly at: StepAtHand }) {
  const { step, facts, record, words } = at;
  const { step: lengths } = useLengths();
  const said = doneWords(step);
  const arm = armStep(step.do, facts, lengths);
  const isDone = step.do === "done";
  const care = cautionOf[step.do];
  return (
    <StepFrame
      at={at}
      trail={{}}
      act={step.do}
      kind="working"
      sentence={arm === null ? words[1] : ""}
      picture={<MakingPicture at={at} />}
      after={<Then at={at} />}
      slab={{ words: said, press: () => (isDone ? goTo("fittings") : record(said)), isReady: true }}
      ways={
        <>
          {step.do === "cut-cover" || step.do === "cut-arm" ? <ToPatterns /> : null}
          {step.do in makingOfStep ? <LeaveOut at={at} /> : null}
        </>
      }
    >
      {care === undefined ? null : <Cautions at={care} />}
      {isDone ? (
        <p>{finishingWords.allDone(facts.cloth !== "none")}</p>
      ) : arm === null ? (
        <HandSteps steps={handSteps(step, "", facts)} />
      ) : (
        <Lines lines={arm.lines} />
      )}
      {step.do === "cut-arm" ? <ArmFold at={at} /> : null}
    </StepFrame>
  );
}

function Lines({ lines }: { readonly lines: readonly string[] }) {
  return (
    <ol className="plain-list numbered">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ol>
  );
}

/** Where the work can hurt. */
const cautionOf: { readonly [name in StepName]?: CautionPlace } = {
  "cut-cover": "cuttingFabric",
  "sew-cover": "sewing",
  "fit-cover": "covering",
  "cut-arm": "cuttingFabric",
  "sew-arm": "sewing",
  "fill-arm": "fillingArm",
  "put-away": "lastPins",
};

const ToPatterns = () => (
  <button type="button" className="patch patch-plain" onClick={() => goTo("print")}>
    {finishingWords.toPatterns}
  </button>
);

function LeaveOut({ at: { record } }: { readonly at: StepAtHand }): ReactNode {
  return (
    <button
      type="button"
      className="patch patch-plain"
      onClick={() => record(finishingWords.leftOut, { passedOver: true })}
    >
      {finishingWords.leaveOut}
    </button>
  );
}

/** The length that counts at this step, above the slab. */
function Then({ at: { step, facts } }: { readonly at: StepAtHand }) {
  const { step: lengths } = useLengths();
  const [words, length] =
    step.do === "waist-tape"
      ? [makingThen.waistTape, facts.waistTape?.length]
      : step.do === "fill-arm"
        ? [makingThen.arm, facts.arm?.girths.upperArm]
        : ["", undefined];
  return length === undefined ? null : (
    <p className="stop-then">
      {words} <strong>{writtenLength(length, lengths)}</strong>
    </p>
  );
}
