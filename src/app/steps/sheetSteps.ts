import { isStructure } from "../../core/padding/piece";
import type { Plan, PlannedPiece } from "../../core/plan/plan";
import type { Fitting } from "../../document/fitting";
import { isReadAtLines } from "./isReadAtLines";
import { partOfStep } from "./jobPart";
import { isMarkedAbove, makingOfStep, type MakingStepName } from "./makingSteps";
import { type PlannedFrom, plannedSteps } from "./plannedSteps";
import type { Step } from "./step";
import { usualCover } from "./stepRecord";
import { lineDepths, workFacts } from "./workFacts";
import { nothingDone, type WorkState, workState } from "./workState";

/** A step as it stands on paper, ticked where the log tells that it was done. */
export interface SheetStep {
  readonly step: Step;
  readonly standing: "open" | "done" | "leftOut";
}

/** Steps that belong together: what comes before, everything about one piece, or what is done to all of it. */
export interface SheetPart {
  readonly kind: "before" | "structure" | "measure" | "tuning" | "ending" | "making";
  readonly piece: PlannedPiece | null;
  /** The piece that went on last before these steps. */
  readonly after: PlannedPiece | null;
  readonly steps: readonly SheetStep[];
}

/** The whole job on paper: the very steps that would follow one another, if the tape reads what the plan expects. */
export function sheetParts(
  plan: Plan,
  { work, form }: Pick<Fitting, "work" | "form">,
  known: Pick<PlannedFrom, "hasArm" | "above">,
): readonly SheetPart[] {
  const isAtLines = isReadAtLines(plan, { form });
  const done = workState(workFacts(work, lineDepths(plan)));
  const parts: SheetPart[] = [];
  let after: PlannedPiece | null = null;
  const cloth = done.cloth ?? usualCover;
  for (const { step } of plannedSteps({ plan, state: nothingDone, cloth, isAtLines, ...known })) {
    if (step.do === "done") break;
    const last = parts.at(-1);
    const [kind, piece] = partOf(step, last ?? null);
    const own: SheetStep = { step, standing: standingOf(step, done) };
    if (last !== undefined && last.kind === kind && last.piece === piece)
      parts[parts.length - 1] = { ...last, steps: [...last.steps, own] };
    else parts.push({ kind, piece, after, steps: [own] });
    if (step.do === "pin") after = piece;
  }
  return parts;
}

/** Lines are carried out over the piece that was just pinned. */
function partOf({ do: name, piece }: Step, last: SheetPart | null): readonly [SheetPart["kind"], PlannedPiece | null] {
  if (partOfStep[name] !== "padding") return ["making", null];
  if (piece !== null) return [isStructure(piece) ? "structure" : "tuning", piece];
  switch (name) {
    case "carry-lines":
      return [last?.kind ?? "structure", last?.piece ?? null];
    case "read":
    case "read-all":
      return ["measure", null];
    case "baste":
    case "build-above":
    case "correct-above":
    case "look":
      return ["ending", null];
    default:
      return ["before", null];
  }
}

function standingOf(step: Step, done: WorkState): SheetStep["standing"] {
  const { do: name, levels } = step;
  if (!isStepDone(step, done)) return "open";
  const isLeftOut =
    name === "read-cover"
      ? levels.every((level) => done.unreadOverCover.has(level))
      : name in makingOfStep && done.leftOut.has(makingOfStep[name as MakingStepName]);
  return isLeftOut ? "leftOut" : "done";
}

function isStepDone({ do: name, piece, pieceIds, levels, build }: Step, done: WorkState): boolean {
  const id = piece?.id ?? "";
  switch (name) {
    case "prepare-form":
      return done.isPrepared;
    case "mark-lines":
      return done.areLinesMarked;
    case "read-lines":
      return done.areLinesRead;
    case "trial":
      return done.isTried;
    case "cut":
      return done.cut.has(id) || done.pinned.has(id);
    case "stack":
      return done.stacked.has(id);
    case "pin":
      return done.pinned.has(id);
    case "carry-lines":
      return pieceIds.every((carried) => done.carriedOver.has(carried));
    case "baste":
      return pieceIds.every((basted) => done.basted.has(basted));
    case "look":
      return done.hasLooked;
    case "build-above":
      return build !== null && done.builtAbove.has(build.id);
    case "mark-armhole":
      return build !== null && isMarkedAbove(done, build.id);
    case "read-between":
      return done.isReadBetween;
    case "choose-cover":
      return done.cloth !== null;
    case "read-cover":
      return levels.every((level) => done.readOverCover.has(level));
    default:
      return name in makingOfStep && done.made.has(makingOfStep[name as MakingStepName]);
  }
}
