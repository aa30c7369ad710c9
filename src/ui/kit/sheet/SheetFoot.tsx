import type { Plan } from "../../../core/plan/plan";
import { waistTape } from "../waistTape";
import { shortCautions } from "../../../text/cautions";
import { finishingWords } from "../../../text/finishing";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";

/** The foot of the padding sheet: what finishing takes. */
export function SheetFoot({ plan }: { readonly plan: Plan }) {
  return plan.pieces.length === 0 ? null : (
    <footer className="sheet-foot sheet-keep">
      <Finishing plan={plan} />
    </footer>
  );
}

/** The cover, the waist tape and the pins counted back, in the words of the finishing. */
function Finishing({ plan }: { readonly plan: Plan }) {
  const { unit, write } = useLengths();
  const { lengths } = useDerived();
  const tape = lengths === null ? null : waistTape(plan, lengths.body);
  return (
    <p>
      <strong>{finishingWords.title}.</strong> {shortCautions("covering")} {finishingWords.supplyCover(unit)}{" "}
      {tape === null ? null : (
        <>
          <strong>{finishingWords.tapeTitle}.</strong>{" "}
          {tape.height.kind === "alongBack"
            ? finishingWords.tapeHeight(write(tape.height.value))
            : finishingWords.tapeGuessed(write(tape.height.value))}{" "}
          {finishingWords.tapeLength(write(tape.length), unit)}{" "}
        </>
      )}
      {finishingWords.count}
    </p>
  );
}
