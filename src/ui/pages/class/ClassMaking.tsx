import { useMemo } from "react";
import type { ClassView } from "../../../app/classView/classView";
import { armParts } from "../../../core/arm/armParts";
import type { SoftArm } from "../../../core/arm/softArm";
import { armPartLabels } from "../../../text/arm";
import { classWords } from "../../../text/classView";
import { ArmHangsPicture } from "../../drawing/arm/ArmPicture";
import { coverPanelsScene } from "../../drawing/coverPanelsScene";
import { Drawing } from "../../drawing/Drawing";
import { flatPartsScene } from "../../drawing/flatPartsScene";
import { CoverPicture } from "../../drawing/torso/CoverPicture";
import { coverDoing, isArmCutOrSewn } from "../../kit/plan/makingPictures";
import { classSaid } from "./ClassWords";

/** A step over the padding, as large as the room is: panels or parts as they are cut, the arm where it hangs, or the covered form. */
export const ClassMaking = ({ view }: { readonly view: ClassView }) => (
  <section className="class-form class-making" aria-label={classWords.form}>
    <Picture view={view} title={classSaid(view, view.step).headline} />
  </section>
);

interface PictureProps {
  readonly view: ClassView;
  readonly title: string;
}

function Picture({ view, title }: PictureProps) {
  const { step, facts, plan } = view;
  const { arm } = facts;
  if (step.do === "cut-cover" || step.do === "sew-cover") return <Panels cover={view.cover} title={title} />;
  if (arm !== null && isArmCutOrSewn(step.do)) return <ArmParts arm={arm} title={title} />;
  if (arm !== null && step.do === "hang-arm") return <ArmHangsPicture arm={arm} levels={plan.levels} />;
  return (
    <CoverPicture
      levels={plan.levels}
      on={plan.pieces}
      doing={coverDoing(step.do)}
      title={title}
      isCovered={facts.cloth !== "none"}
    />
  );
}

function Panels({ cover, title }: Pick<ClassView, "cover"> & Pick<PictureProps, "title">) {
  const scene = useMemo(() => {
    const fitted = cover();
    return fitted === null ? null : coverPanelsScene(fitted, { title, isNumbered: false });
  }, [cover, title]);
  return scene === null ? null : <Drawing scene={scene} />;
}

function ArmParts({ arm, title }: { readonly arm: SoftArm } & Pick<PictureProps, "title">) {
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
