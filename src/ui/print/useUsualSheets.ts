import type { PadProgress } from "../../app/padProgress";
import type { Plan } from "../../core/plan/plan";
import { type SheetKind, usualSheets } from "./sheetKind";
import { smallCutPages } from "./cutPages";
import { useSmallCards } from "./useSmallCards";
import { usePaddingPages } from "./usePaddingPages";

/** The sheets that are printed unless somebody chooses others. */
export function useUsualSheets(plan: Plan, progress: PadProgress): readonly SheetKind[] {
  const { pages } = usePaddingPages(plan, progress);
  const cards = useSmallCards(plan);
  const areLinesOpen = plan.basis === "draft" && progress.pinnedCount === 0;
  return usualSheets(pages.length, cards.length === 0 ? 0 : smallCutPages(cards).length, areLinesOpen);
}
