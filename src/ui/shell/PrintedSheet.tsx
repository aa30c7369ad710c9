import type { PadProgress } from "../../app/progress/padProgress";
import type { Plan } from "../../core/plan/plan";
import { useDerived } from "../kit/useDerived";
import { LinesSheet } from "../kit/sheet/LinesSheet";
import { PrintSheet } from "../kit/sheet/PrintSheet";
import { usualSheets } from "../../app/print/sheetKind";
import { SmallCutSheet } from "../kit/sheet/SmallCutSheet";

/** The usual sheets as they are printed from any place of work; without a plan the place itself is printed. */
export function PrintedSheet() {
  const { planning, progress } = useDerived();
  return planning.kind === "planned" && progress !== null ? (
    <UsualSheets plan={planning.plan} progress={progress} />
  ) : null;
}

function UsualSheets({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const usual = usualSheets(plan.pieces.length > 0, plan.basis === "draft" && progress.pinnedCount === 0);
  return (
    <>
      {usual.includes("lines") ? <LinesSheet plan={plan} /> : null}
      <PrintSheet plan={plan} />
      {usual.includes("smallCutting") ? <SmallCutSheet plan={plan} progress={progress} /> : null}
    </>
  );
}
