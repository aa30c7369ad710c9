import type { StepName } from "../../../app/steps/step";
import type { CoverDoing } from "../../drawing/torso/coverScene";

/** Which picture shows a step over the padding: of the arm its parts, of everything else what is done to the covered form. */
export const isArmCutOrSewn = (step: StepName): boolean => armSteps.has(step);
const armSteps: ReadonlySet<StepName> = new Set(["cut-arm", "sew-arm", "fill-arm"]);

/** What is chosen, or read between the lines, has none. */
export const hasPicture = (step: StepName): boolean =>
  step in doingOf || isArmCutOrSewn(step) || otherPictures.has(step);
const otherPictures: ReadonlySet<StepName> = new Set(["cut-cover", "sew-cover", "close-cover", "hang-arm"]);

export const coverDoing = (step: StepName): CoverDoing => doingOf[step] ?? "closed";
const doingOf: { readonly [name in StepName]?: CoverDoing } = {
  "fit-cover": "pinSides",
  "correct-cover": "pinSides",
  "hem-cover": "hem",
  "waist-tape": "waistTape",
  "style-lines": "lines",
  "put-away": "bag",
};
