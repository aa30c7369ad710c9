import type { Plan } from "../../core/plan/plan";
import { waistTape } from "../finishing/waistTape";
import { shortCautions } from "../text/cautions";
import { finishingWords } from "../text/finishing";
import { printingWords } from "../text/printing";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";

/** The foot of the padding sheet: what padding cannot do, what to do after each piece, and what finishing takes. */
export function SheetFoot({ plan, limits }: { readonly plan: Plan; readonly limits: readonly string[] }) {
  return (
    <footer className="sheet-foot">
      {limits.length === 0 ? null : (
        <>
          <h3>{printingWords.limits}</h3>
          <ul className="plain-list">
            {limits.map((limit) => (
              <li key={limit}>{limit}</li>
            ))}
          </ul>
        </>
      )}
      <p>
        {printingWords.after} {printingWords.guessNote}
      </p>
      {plan.pieces.length === 0 ? null : <Finishing plan={plan} />}
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
      {finishingWords.count}{" "}
      <strong className="sheet-pins">
        {printingWords.pinsIn} <span className="sheet-write" /> {printingWords.pinsOut} <span className="sheet-write" />
      </strong>
    </p>
  );
}
