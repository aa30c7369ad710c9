import type { Measurements } from "../../../core/body/measurements";
import type { Plan } from "../../../core/plan/plan";
import { waistTape } from "../../../core/plan/waistTape";
import { battingNeed } from "../../../text/batting";
import { battingNeeds, formatArea } from "../../../text/battingNeeds";
import { finishingWords } from "../../../text/finishing";
import { useFitting, useLengths } from "../../kit/useStore";

interface SuppliesProps {
  readonly plan: Plan;
  readonly body: Measurements;
}
/** What the whole job takes. */
export function SuppliesPart({ plan, body }: SuppliesProps) {
  const { unit, write } = useLengths();
  const needs = battingNeeds(plan, useFitting());
  const tape = waistTape(plan, body);
  return (
    <section className="stitched stack">
      <h2>{finishingWords.suppliesTitle}</h2>
      <ul className="plain-list">
        {[
          ...needs.map(({ name, area }) => battingNeed(name, formatArea(area, unit))),
          finishingWords.supplyBra,
          finishingWords.supplyCover(unit),
          ...(tape ? [finishingWords.supplyTape(write(tape.length))] : []),
          finishingWords.supplyPins(plan.pieces.length * pinsPerPiece),
        ].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

/** Common practice, no source: a dozen pins to each piece. */
const pinsPerPiece = 12;
