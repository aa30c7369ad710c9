import { useMemo } from "react";
import { armParts } from "../../../core/arm/armParts";
import type { SoftArm } from "../../../core/arm/softArm";
import type { LengthStep } from "../../../core/lengthText";
import type { PlannedLevel } from "../../../core/plan/plan";
import { armLineWords, armPartLabels, armPictureWords } from "../../../text/arm";
import { shownLength } from "../../../text/shownLength";
import { Drawing } from "../Drawing";
import { formTorso } from "../torso/torsoShape";
import { armHangsScene } from "./armHangsScene";
import { armPatternScene } from "./armPatternScene";

interface ArmPatternPictureProps {
  readonly arm: SoftArm;
  readonly step: LengthStep;
  /** How many times larger than usual its letters are. */
  readonly larger?: number;
}

/** The parts of a soft arm as they are cut, with what the tape reads around it once it is filled. */
export function ArmPatternPicture({ arm, step, larger = 1 }: ArmPatternPictureProps) {
  const scene = useMemo(() => {
    const { upperArm, elbow, wrist } = arm.girths;
    return armPatternScene({
      parts: armParts(arm),
      larger,
      words: {
        title: armPictureWords.pattern,
        description: armPictureWords.patternText(arm, step),
        parts: armPartLabels,
        lines: armLineWords,
        lengths: {
          upperArm: shownLength(upperArm, step),
          elbow: shownLength(elbow, step),
          wrist: shownLength(wrist, step),
        },
      },
    });
  }, [arm, step, larger]);
  return <Drawing scene={scene} />;
}

interface ArmHangsPictureProps {
  readonly arm: SoftArm;
  /** The form it hangs on. */
  readonly levels: readonly PlannedLevel[];
}

/** The arm on the form: its tab over the shoulder, tied at the armhole. */
export function ArmHangsPicture({ arm, levels }: ArmHangsPictureProps) {
  const scene = useMemo(
    () =>
      armHangsScene({
        shape: formTorso(levels),
        arm,
        title: armPictureWords.hangs,
        description: armPictureWords.hangsText,
      }),
    [arm, levels],
  );
  return <Drawing scene={scene} />;
}
