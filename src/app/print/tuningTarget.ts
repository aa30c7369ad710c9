import type { LevelName } from "../../core/body/vocabulary";
import { type LengthStep, roundLength } from "../../core/lengthText";
import { isStructure } from "../../core/padding/piece";
import type { Plan, TapeReading } from "../../core/plan/plan";
import { type Millimetres, mm } from "../../core/units";
import type { TapePart } from "../progress/padProgress";

/**
 * What the tape is to read once the tuning layers are in: what the person's does, wherever padding is not said to miss it. What goes
 * over everything afterwards adds its own.
 */
export function tunedReading(plan: Plan, level: LevelName, part: TapePart): Millimetres | undefined {
  const { levels, pieces, shortfalls } = plan;
  if (pieces.some(({ kind }) => kind === "outerWrap")) return tuned(plan)[level][part];
  const at = levels.find(({ name }) => name === level);
  const isMissed = shortfalls.some((one) => one.level === level && one.what === part);
  return isMissed ? at?.predicted[part] : at?.body[part].value;
}

/** What a half is short at a line over the structure, if the tape reads there what the plan expects. */
export interface PlannedShortage {
  /** What the planned tuning layers add there. */
  readonly exact: Millimetres;
  /** What a reader finds who takes the printed figures from each other, of which each is rounded for itself. */
  readonly printed: Millimetres;
}

export function plannedShortage(
  plan: Plan,
  level: LevelName,
  half: "frontArc" | "backArc",
  step: LengthStep,
): PlannedShortage {
  const before = plan.pieces.findLast(isStructure)?.readingsAfter ?? plan.bareForm;
  const printed = (part: "girth" | "frontArc") =>
    roundLength(tunedReading(plan, level, part) ?? before[level][part], step) - roundLength(before[level][part], step);
  return {
    exact: mm(tuned(plan)[level][half] - before[level][half]),
    printed: mm(half === "frontArc" ? printed("frontArc") : printed("girth") - printed("frontArc")),
  };
}

const tuned = ({ pieces, bareForm }: Plan): { readonly [level in LevelName]: TapeReading } =>
  pieces.findLast(({ kind }) => kind !== "outerWrap")?.readingsAfter ?? bareForm;
