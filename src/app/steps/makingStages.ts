import type { StepName } from "./step";
import { makingOfStep, type MakingStepName } from "./makingSteps";
import type { WorkState } from "./workState";

/** The stages over the padding, each with its steps in their order. */
const stages = {
  noCover: ["choose-cover"],
  cut: ["choose-cover", "read-between", "cut-cover", "sew-cover"],
  fit: ["fit-cover", "close-cover"],
  read: ["read-cover", "correct-cover"],
  hem: ["hem-cover"],
  lines: ["waist-tape", "mark-armhole", "style-lines"],
  arm: ["cut-arm", "sew-arm", "fill-arm", "hang-arm"],
  after: ["put-away"],
} as const satisfies { readonly [stage: string]: readonly StepName[] };
export type MakingStage = keyof typeof stages;

export interface StageStanding {
  readonly stage: MakingStage;
  readonly standing: "toCome" | "now" | "done" | "leftOut" | "partlyLeftOut";
}

/**
 * What comes over the padding, in its order, and how each of it stands. Null stands for a step while the padding is not done. A knit
 * that is pinned as it is, is not cut; without a cover one stage says that there is none.
 */
export function makingStages(state: WorkState, now: StepName | null, hasArm: boolean): readonly StageStanding[] {
  const names = (Object.keys(stages) as MakingStage[]).filter((name) => isPartOf(name, state, hasArm));
  const at =
    now === "done" ? names.length : names.findIndex((name) => stages[name].some((step: StepName) => step === now));
  return names.map((stage, i) => ({
    stage,
    standing:
      stage === "noCover" ? "leftOut" : now === null || i > at ? "toCome" : i === at ? "now" : passed(stage, state),
  }));
}

function isPartOf(stage: MakingStage, { cloth }: WorkState, hasArm: boolean): boolean {
  switch (stage) {
    case "noCover":
      return cloth === "none";
    case "cut":
      return cloth !== "none" && cloth !== "pulledKnit";
    case "fit":
    case "read":
    case "hem":
      return cloth !== "none";
    case "arm":
      return hasArm;
    case "lines":
    case "after":
      return true;
  }
}

/** A stage that lies behind: done, or left out wholly or in part. */
function passed(stage: MakingStage, { leftOut, unreadOverCover, readOverCover }: WorkState): StageStanding["standing"] {
  const makings = stages[stage].filter((name): name is MakingStepName & StepName => name in makingOfStep);
  const left = makings.filter((name) => leftOut.has(makingOfStep[name])).length;
  const isLeft = stage === "read" ? readOverCover.size === unreadOverCover.size : left > 0 && left === makings.length;
  if (isLeft) return "leftOut";
  return left > 0 || (stage === "read" && unreadOverCover.size > 0) ? "partlyLeftOut" : "done";
}
