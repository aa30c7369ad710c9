import { pieceGain } from "./padProgress";
import { type LevelName, levelNames } from "../../core/body/vocabulary";
import type { Plan, PlannedPiece } from "../../core/plan/plan";

/** Where to lay the tape after a piece: at the level whose girth it adds most to. */
export function levelToMeasure(plan: Plan, piece: PlannedPiece): LevelName {
  const gain = pieceGain(plan, piece);
  return levelNames.reduce((best, level) => (gain[level].girth > gain[best].girth ? level : best));
}
