import type { PadProgress } from "../../../app/progress/padProgress";
import { usualSheets } from "../../../app/print/sheetKind";
import type { Plan } from "../../../core/plan/plan";
import { useDerived } from "../useDerived";
import { LinesSheet } from "./LinesSheet";
import { PrintSheet } from "./PrintSheet";
import { SmallCutSheet } from "./SmallCutSheet";

/** The sheets that are printed unless somebody chooses; nothing without a plan. */
export function UsualSheets() {
  const { planning, progress } = useDerived();
  return planning.kind === "planned" && progress !== null ? (
    <SheetsOf plan={planning.plan} progress={progress} />
  ) : null;
}

function SheetsOf({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const usual = usualSheets(plan.pieces.length > 0, plan.basis === "draft" && progress.pinnedCount === 0);
  return (
    <>
      {usual.includes("lines") ? <LinesSheet plan={plan} /> : null}
      <PrintSheet plan={plan} />
      {usual.includes("smallCutting") ? <SmallCutSheet plan={plan} progress={progress} /> : null}
    </>
  );
}
