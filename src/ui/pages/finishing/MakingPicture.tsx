import { ArmHangsPicture, ArmPatternPicture } from "../../drawing/arm/ArmPicture";
import { CoverPicture } from "../../drawing/torso/CoverPicture";
import { coverDoing, isArmCutOrSewn } from "../../kit/plan/makingPictures";
import type { StepAtHand } from "../../kit/stop/useStep";
import { useLengths } from "../../kit/useStore";
import { CoverPanelsPicture } from "./CoverPanelsPicture";

/** The picture of a step over the padding: the covered form, or the panels that are cut. */
export function MakingPicture({ at }: { readonly at: StepAtHand }) {
  const { step } = at;
  const { step: lengths } = useLengths();
  if (step.do === "cut-cover" || step.do === "sew-cover") return <CoverPanelsPicture at={at} />;
  const { arm } = at.facts;
  if (arm !== null && isArmCutOrSewn(step.do)) return <ArmPatternPicture arm={arm} step={lengths} />;
  if (arm !== null && step.do === "hang-arm") return <ArmHangsPicture arm={arm} levels={at.plan.levels} />;
  return (
    <CoverPicture
      levels={at.plan.levels}
      on={at.pinned}
      doing={coverDoing(step.do)}
      title={at.words[0]}
      isCovered={at.facts.cloth !== "none"}
    />
  );
}
