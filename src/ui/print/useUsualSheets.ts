import type { PadProgress } from "../../app/padProgress";
import type { Plan } from "../../core/plan/plan";
import { type SheetKind, usualSheets } from "./sheetKind";
import { smallCutPages } from "./smallCutPages";
import { usePaddingPages } from "./usePaddingPages";

/** The sheets that are printed unless somebody chooses others. */
export function useUsualSheets(plan: Plan, progress: PadProgress): readonly SheetKind[] {
  const { pages } = usePaddingPages(plan, progress);
  return usualSheets(pages.length, plan.pieces.length === 0 ? 0 : smallCutPages(plan.pieces).length);
}
