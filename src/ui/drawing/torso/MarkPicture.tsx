import { useMemo } from "react";
import type { LineAtForm } from "../../../app/progress/linesAtForm";
import type { ByLevel, LevelName } from "../../../core/body/vocabulary";
import type { LengthStep } from "../../../core/lengthText";
import type { Plan } from "../../../core/plan/plan";
import { linesWords } from "../../../text/linesAtForm";
import { levelWords, lineWords } from "../../../text/pictures";
import { shownLength } from "../../../text/shownLength";
import { Drawing } from "../Drawing";
import { markScene } from "./markScene";
import { formTorso } from "./torsoShape";

/** How one of the person's lines is marked on the form, with every line and its distance below the nape. */
interface MarkPictureProps {
  readonly plan: Plan;
  readonly lines: readonly LineAtForm[];
  readonly level: LevelName;
  readonly step: LengthStep;
  /** Covered figures leave no trace of themselves in the picture. */
  readonly isCovered?: boolean;
  readonly textSize?: number;
  readonly isNarrow?: boolean;
}

export function MarkPicture({
  plan,
  lines,
  level,
  step,
  isCovered = false,
  textSize = 32,
  isNarrow = false,
}: MarkPictureProps) {
  const scene = useMemo(() => {
    const { mark } = linesWords;
    const line = lineWords[level];
    const distances = Object.fromEntries(
      lines.map((item) => [item.level, shownLength(item.depth, step)]),
    ) as ByLevel<string>;
    return markScene({
      shape: formTorso(plan.levels),
      now: level,
      marked: lines.filter(({ isMarked }) => isMarked).map((item) => item.level),
      distances: isCovered ? null : distances,
      textSize,
      isNarrow,
      words: {
        title: mark.picture(line),
        description: isCovered ? mark.pictureCovered(line) : mark.pictureText(line, distances[level]),
        front: mark.front,
        leftSide: mark.leftSide,
        nape: mark.nape,
        levels: levelWords,
      },
    });
  }, [plan, lines, level, step, isCovered, textSize, isNarrow]);
  return <Drawing scene={scene} />;
}
