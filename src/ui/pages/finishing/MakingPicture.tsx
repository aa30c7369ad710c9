import { useMemo } from "react";
import { Drawing } from "../../drawing/Drawing";
import { ArmHangsPicture, ArmPatternPicture } from "../../drawing/arm/ArmPicture";
import { type CoverDoing, coverScene } from "../../drawing/torso/coverScene";
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
  return <OnForm at={at} doing={coverDoing(step.do)} />;
}

function OnForm({
  at: { plan, pinned, words, facts },
  doing,
}: {
  readonly at: StepAtHand;
  readonly doing: CoverDoing;
}) {
  const isCovered = facts.cloth !== "none";
  const scene = useMemo(
    () => coverScene({ levels: plan.levels, on: pinned, doing, title: words[0], isCovered }),
    [plan, pinned, doing, words, isCovered],
  );
  return <Drawing scene={scene} />;
}
