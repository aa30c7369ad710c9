import type { LengthUnit } from "../../../core/lengthText";
import type { Plan } from "../../../core/plan/plan";
import { lengthWriter } from "../../../text/lengthWriter";
import { namesLength } from "../../../text/withoutFigures";
import { figureScene } from "../../drawing/figureScene";
import type { FigureView } from "../../drawing/figureView";
import type { Scene } from "../../drawing/scene";

/** The form from one side for the back row, with the pieces up to `now` (all where null); nobody reads a length off it. */
interface FormPicture {
  readonly plan: Plan;
  readonly view: FigureView;
  readonly now: number | null;
  readonly unit: LengthUnit;
  readonly isPersonCovered: boolean;
  readonly isNamed?: boolean;
}

export function formScene({ plan, view, now, unit, isPersonCovered, isNamed = true }: FormPicture): Scene {
  const { levels, pieces } = plan;
  const scene = figureScene({
    levels,
    pieces,
    view,
    lengths: lengthWriter(unit),
    shownOn: "paper",
    isNamed,
    isLed: true,
    ...(now === null ? {} : { now }),
  });
  return {
    ...scene,
    ...(isPersonCovered ? { description: "" } : {}),
    labels: scene.labels.filter(({ text }) => !namesLength(text)),
    marks: isPersonCovered ? scene.marks.filter(({ role }) => role !== "body" && role !== "bodyGuess") : scene.marks,
  };
}
