import type { TapePart } from "../../app/padProgress";
import type { LevelName } from "../../core/body/vocabulary";
import type { LengthUnit } from "../../core/lengthText";
import type { Plan, PlannedLevel, PlannedPiece, TapeReading } from "../../core/plan/plan";
import { levelToMeasure } from "../padding/levelToMeasure";
import { isReadOnWall, wallReadings } from "./wallReadings";
import type { WallPerson } from "./wallPeople";
import type { WallState } from "./wallState";

/** What the parts of the wall show: one plan at one level with so many pieces on. */
export interface WallView {
  readonly plan: Plan;
  readonly scene: WallState["scene"];
  readonly level: PlannedLevel;
  readonly step: number;
  /** The piece that went on last; none on the bare form. */
  readonly piece: PlannedPiece | null;
  readonly readings: TapeReading;
  /** Which stretches a person read with just these pieces on. */
  readonly isRead: { readonly [part in TapePart]: boolean };
  readonly isCovered: boolean;
  readonly unit: LengthUnit;
}

/** Null only for a plan without levels. */
export function wallView({ plan, progress }: WallPerson, state: WallState, unit: LengthUnit): WallView | null {
  const step = Math.min(state.step, plan.pieces.length);
  const piece = plan.pieces[step - 1] ?? null;
  const name = state.level === "follow" ? followedLevel(plan, piece) : state.level;
  const level = plan.levels.find((planned) => planned.name === name) ?? plan.levels[0];
  if (level === undefined) return null;
  const readings = wallReadings(plan, progress, level.name, step);
  const readAt = (part: TapePart): boolean => isReadOnWall(progress, level.name, part, step);
  const isRead = { girth: readAt("girth"), frontArc: readAt("frontArc"), backArc: readAt("backArc") };
  return {
    plan,
    scene: state.scene,
    level,
    step,
    piece,
    readings,
    isRead,
    isCovered: state.figures === "covered",
    unit,
  };
}

/** The level that the piece changes most; before the first piece, the one that the first will change. */
function followedLevel(plan: Plan, piece: PlannedPiece | null): LevelName {
  const ahead = piece ?? plan.pieces[0];
  return ahead === undefined ? "waist" : levelToMeasure(plan, ahead);
}
