import { useState } from "react";
import type { PadProgress } from "../../../app/progress/padProgress";
import type { Plan } from "../../../core/plan/plan";
import { printingWords } from "../../../text/printing";
import { pageAddress, useAskedThing } from "../../kit/page";
import { LinesSheet } from "../../kit/sheet/LinesSheet";
import { PrintSheet } from "../../kit/sheet/PrintSheet";
import { SessionSheet } from "../../kit/sheet/SessionSheet";
import { latePart } from "../../kit/rescue/latePart";
import { NamePrinted } from "../../kit/sheet/SheetPage";
import { SmallCutSheet } from "../../kit/sheet/SmallCutSheet";
import { type SheetKind, sheetKinds, usualSheets } from "../../../app/print/sheetKind";
import { useDerived } from "../../kit/useDerived";
import { CutSheet } from "./CutSheet";
import { MeasureSheet } from "./MeasureSheet";
import { PatternPart } from "./PatternPart";
import { SuppliesSheet } from "./SuppliesSheet";

/** Typed by whoever teaches, and by nobody else. */
const StepNotesPart = latePart(() => import("./StepNotesPart").then(({ StepNotesPart }) => StepNotesPart));

/** The sheets as they will lie on paper, which of them, and the patch that prints them. */
export function PrintPage() {
  const { planning, progress } = useDerived();
  return planning.kind === "planned" && progress !== null ? (
    <PlanSheets plan={planning.plan} progress={progress} />
  ) : (
    <BlankSheet />
  );
}

function PlanSheets({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const usual = usualSheets(plan.pieces.length > 0, plan.basis === "draft" && progress.pinnedCount === 0);
  const areNotesAsked = useAskedThing() === "notes";
  const [wished, setWished] = useState<readonly SheetKind[] | null>(areNotesAsked ? ["session"] : null);
  const [isNamed, setNamed] = useState(true);
  const shown = sheetKinds.filter((kind) => (wished ?? usual).includes(kind));
  return (
    <NamePrinted value={isNamed}>
      <div className="place-head stack unprinted">
        <h1>{printingWords.title}</h1>
        <p className="lead">{printingWords.lead}</p>
        <SheetChoice chosen={shown} hasPlan onChoose={setWished} />
        <label className="tick">
          <input type="checkbox" checked={!isNamed} onChange={({ target }) => setNamed(!target.checked)} />
          {printingWords.nameless}
        </label>
        <div className="row">
          <PrintButton isReady={shown.length > 0} />
        </div>
        {shown.length === 0 ? <p>{printingWords.noneChosen}</p> : null}
      </div>
      {shown.includes("session") ? <StepNotesPart plan={plan} isOpen={areNotesAsked} /> : null}
      <PatternPart />
      {shown.includes("lines") ? <LinesSheet plan={plan} /> : null}
      {shown.includes("padding") ? <PrintSheet plan={plan} /> : null}
      {shown.includes("smallCutting") ? <SmallCutSheet plan={plan} progress={progress} /> : null}
      {shown.includes("supplies") ? <SuppliesSheet plan={plan} /> : null}
      {shown.includes("session") ? <SessionSheet plan={plan} /> : null}
      {shown.includes("measuring") ? <MeasureSheet /> : null}
      {shown.includes("cutting") ? <CutSheet plan={plan} /> : null}
    </NamePrinted>
  );
}

/** Without a plan there is only the blank measuring sheet. */
function BlankSheet() {
  const [shown, setShown] = useState<readonly SheetKind[]>(["measuring"]);
  return (
    <>
      <div className="place-head stack unprinted">
        <h1>{printingWords.title}</h1>
        <p className="lead">{printingWords.waiting}</p>
        <SheetChoice chosen={shown} hasPlan={false} onChoose={setShown} />
        <div className="row">
          <PrintButton isReady={shown.length > 0} />
          <a className="patch" href={pageAddress("body")}>
            {printingWords.toReadings}
          </a>
        </div>
        {shown.length === 0 ? <p>{printingWords.noneChosen}</p> : null}
      </div>
      {shown.includes("measuring") ? <MeasureSheet /> : null}
    </>
  );
}

function PrintButton({ isReady }: { readonly isReady: boolean }) {
  return (
    <button type="button" className="patch patch-main" disabled={!isReady} onClick={() => window.print()}>
      {printingWords.print}
    </button>
  );
}

/** Which sheets to print: any of them; those of the plan wait until there is one. */
interface SheetChoiceProps {
  readonly chosen: readonly SheetKind[];
  readonly hasPlan: boolean;
  readonly onChoose: (chosen: readonly SheetKind[]) => void;
}

function SheetChoice({ chosen, hasPlan, onChoose }: SheetChoiceProps) {
  return (
    <fieldset className="sheet-choice">
      <legend>{printingWords.which}</legend>
      {sheetKinds.map((kind) => {
        const { name, buys } = printingWords.sheets[kind];
        const waits = !hasPlan && kind !== "measuring";
        return (
          <label key={kind} className="tick">
            <input
              type="checkbox"
              checked={chosen.includes(kind)}
              disabled={waits}
              onChange={({ target }) =>
                onChoose(target.checked ? [...chosen, kind] : chosen.filter((other) => other !== kind))
              }
            />
            <span>
              <strong>{name}</strong> <span className="quiet">{waits ? printingWords.needsPlan : buys}</span>
            </span>
          </label>
        );
      })}
    </fieldset>
  );
}
