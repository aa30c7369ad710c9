import { useMemo } from "react";
import type { ClassView } from "../../../app/classView/classView";
import { armParts } from "../../../core/arm/armParts";
import type { SoftArm } from "../../../core/arm/softArm";
import { coverParts } from "../../../core/cover/coverParts";
import { usualAllowances } from "../../../core/cover/cuttingLine";
import { armPartLabels } from "../../../text/arm";
import { classWords } from "../../../text/classView";
import { panelNames } from "../../../text/patterns";
import { ArmHangsPicture } from "../../drawing/arm/ArmPicture";
import { Drawing } from "../../drawing/Drawing";
import { flatPartsScene } from "../../drawing/flatPartsScene";
import { coverScene } from "../../drawing/torso/coverScene";
import { classSaid } from "./ClassWords";
import { coverDoing, isArmCutOrSewn } from "../../kit/plan/makingPictures";

interface MakingProps {
  readonly view: ClassView;
}

/** A step over the padding, as large as the room is: panels or parts as they are cut, the arm where it hangs, or the covered form. */
export function ClassMaking({ view }: MakingProps) {
  const { step, facts, plan } = view;
  const { arm } = facts;
  return (
    <section className="class-form class-making" aria-label={classWords.form}>
      {step.do === "cut-cover" || step.do === "sew-cover" ? (
        <Panels view={view} />
      ) : arm !== null && isArmCutOrSewn(step.do) ? (
        <ArmParts view={view} arm={arm} />
      ) : arm !== null && step.do === "hang-arm" ? (
        <ArmHangsPicture arm={arm} levels={plan.levels} />
      ) : (
        <OnForm view={view} />
      )}
    </section>
  );
}

function Panels({ view }: MakingProps) {
  const { cover } = view;
  const { headline: title } = classSaid(view, view.step);
  const scene = useMemo(() => {
    const fitted = cover();
    if (fitted === null) return null;
    const names = fitted.panels.map(({ name }) => panelNames[name]);
    return flatPartsScene(coverParts(fitted, usualAllowances), { title, names, isNumbered: false });
  }, [cover, title]);
  return scene === null ? null : <Drawing scene={scene} />;
}

function ArmParts({ view, arm }: MakingProps & { readonly arm: SoftArm }) {
  const { headline: title } = classSaid(view, view.step);
  const scene = useMemo(() => {
    const parts = armParts(arm);
    const names = parts.map(({ name }) => armPartLabels[name]);
    return flatPartsScene(
      parts.map(({ part }) => part),
      { title, names, isNumbered: false },
    );
  }, [arm, title]);
  return <Drawing scene={scene} />;
}

function OnForm({ view }: MakingProps) {
  const { plan, step, facts } = view;
  const { headline: title } = classSaid(view, step);
  const isCovered = facts.cloth !== "none";
  const scene = useMemo(
    () => coverScene({ levels: plan.levels, on: plan.pieces, doing: coverDoing(step.do), title, isCovered }),
    [plan, step, title, isCovered],
  );
  return <Drawing scene={scene} />;
}
