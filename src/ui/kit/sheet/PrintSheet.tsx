import type { Plan } from "../../../core/plan/plan";
import { shortfallCause } from "../../../app/progress/shortfallCause";
import { isBare } from "../../../app/progress/isBare";
import { FigureOf } from "./FigureOf";
import { planWords } from "../../../text/plan";
import { printingWords } from "../../../text/printing";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";
import { PrintMeasurements } from "./SheetReadings";
import { PrintSteps } from "./PrintSteps";
import { usePrintedName } from "./SheetPage";
import { SheetFoot, SheetHead } from "./SheetHeadFoot";
import { plannedAbove } from "../../../app/above/fittingBuilds";
import { armReading } from "../../../core/arm/armReadings";
import { sheetParts } from "../../../app/steps/sheetSteps";

/**
 * The padding sheet: what padding cannot do, the figure, the measurements, and every step of the work in its order with boxes to tick and
 * room to write; what is done already is ticked and filled in. The paper breaks it between steps.
 */
export function PrintSheet({ plan }: { readonly plan: Plan }) {
  const title = usePrintedName();
  const fitting = useFitting();
  const derived = useDerived();
  const known = {
    hasArm: armReading(derived.lengths?.body ?? {}).kind === "whole",
    above: plannedAbove(plan, derived, fitting),
  };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets" tabIndex={0} aria-label={printingWords.sheetTitle(title)}>
      <article className="sheet sheet-work">
        <SheetHead plan={plan} />
        <DraftLine plan={plan} isBegun={!isBare(fitting.work)} />
        <Limits plan={plan} />
        <div className="sheet-top">
          {plan.pieces.length === 0 ? null : (
            <div className="sheet-figures">
              <FigureOf plan={plan} view="front" isNamed />
              <FigureOf plan={plan} view="back" isNamed={false} />
            </div>
          )}
          <PrintMeasurements plan={plan} />
        </div>
        {plan.pieces.length === 0 ? (
          <p>{plan.shortfalls.length === 0 ? printingWords.none : printingWords.noneShort}</p>
        ) : (
          <PrintSteps plan={plan} parts={sheetParts(plan, fitting, known)} />
        )}
        <SheetFoot plan={plan} />
      </article>
    </section>
  );
}

/** What padding cannot do, before anything is cut. */
function Limits({ plan }: { readonly plan: Plan }) {
  const { matters, shortfalls, seamShifts } = plan;
  const { step } = useLengths();
  const words = planWords(step);
  const limits = [
    ...matters.map((matter) => words.formMatter(matter)),
    ...shortfalls.map((shortfall) => words.shortfallAdvice(shortfall, shortfallCause(plan, shortfall))),
    ...seamShifts.map((shift) => words.seamShift(shift)),
  ];
  if (limits.length === 0) return null;
  return (
    <section className="sheet-limits">
      <h3 className="sheet-sub">{printingWords.limits(seamShifts.length > 0)}</h3>
      <ul className="plain-list">
        {limits.map((limit) => (
          <li key={limit}>{limit}</li>
        ))}
      </ul>
    </section>
  );
}

/** A plan that is still a draft says so at its head, with what it may miss by. */
function DraftLine({ plan, isBegun }: { readonly plan: Plan; readonly isBegun: boolean }) {
  const { write } = useLengths();
  if (plan.basis !== "draft") return null;
  const note = printingWords.draftNote(write(plan.mayMiss));
  return (
    <p>
      <strong>{isBegun ? printingWords.draftBegun(note) : printingWords.draft(note)}</strong>
    </p>
  );
}
