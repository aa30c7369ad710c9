import { apexToApexEstimate } from "../../core/body/estimates";
import { type BetweenHeights, type BetweenReadingName, betweenReadings } from "../../core/cover/betweenLines";
import type { Cloth } from "../../core/cover/cloth";
import { coverGround, coverLines } from "../../core/cover/coverGround";
import { coverMatters } from "../../core/cover/coverMatters";
import { type FittedCover, fittedCover } from "../../core/cover/fittedCover";
import type { ByLevel } from "../../core/body/vocabulary";
import type { PlanInput } from "../../core/plan/basis";
import type { Plan, PlannedLevel } from "../../core/plan/plan";
import { type Fitting, readLengths } from "../../document/fitting";
import { lastChange } from "../progress/lastChange";

/** A plan with what the tape reads over it on the level lines, or is expected to. */
export interface PaddedPlan {
  readonly plan: Plan;
  readonly replan: {
    readonly finished: ByLevel<{ readonly [part in "girth" | "frontArc"]: { readonly value: number } }>;
  };
}

/** What is expected of a plan that nobody has worked by: the person's own figures. */
export const asPlanned = (plan: Plan): PaddedPlan => ({
  plan,
  replan: {
    finished: Object.fromEntries(plan.levels.map(({ name, body }) => [name, body])) as ByLevel<PlannedLevel["body"]>,
  },
});

/**
 * The cover for what the tape reads over the padding, or will read, on the level lines, and for what was read between them; with
 * one more seam in front where the cloth must not ease so much.
 */
export function coverOfStep(
  { plan, replan }: PaddedPlan,
  { body, form }: PlanInput,
  cloth: Cloth,
  fitting: Pick<Fitting, "work" | "unit">,
): FittedCover {
  const lowest = Math.max(...plan.levels.map(({ depthBelowNape }) => depthBelowNape.value));
  const between = readBetween(fitting);
  const ground = coverGround(plan.levels, plan.pieces, {
    apexToApex: body.apexToApex ?? apexToApexEstimate(body.bustGirth ?? 0).value,
    lowerEdge: form.lowerEdgeBelowNape ?? null,
    read: [
      ...plan.levels.map(({ name, depthBelowNape }) => ({
        name,
        depthBelowNape: depthBelowNape.value,
        girth: replan.finished[name].girth.value,
        front: replan.finished[name].frontArc.value,
      })),
      ...betweenReadings(coverLines(plan.levels, lowest, between.at), between.readings),
    ],
    betweenAt: between.at,
  });
  const cover = fittedCover(ground, cloth);
  const isSeamAsked = coverMatters(cover).some(({ kind }) => kind === "sideFrontSeam");
  return isSeamAsked ? fittedCover({ ...ground, hasSideFrontSeams: true }, cloth) : cover;
}

/** What was read between the lines since a piece was last pinned or taken off, and at what heights (mm). */
function readBetween({ work, unit }: Pick<Fitting, "work" | "unit">): {
  readonly readings: { readonly [name in BetweenReadingName]?: number };
  readonly at: BetweenHeights;
} {
  const changed = lastChange(work);
  const read = work.findLast((entry, i) => i > changed && entry.did === "measuredBetween");
  if (read?.did !== "measuredBetween") return { readings: {}, at: {} };
  return { readings: readLengths(read.readings, unit), at: read.belowNapeMm ?? {} };
}
