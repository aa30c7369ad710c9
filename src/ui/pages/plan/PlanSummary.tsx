import type { Plan } from "../../../core/plan/plan";
import { tapeAgreement } from "../../../core/tolerances";
import { planningWords } from "../../../text/planning";
import { useLengths } from "../../kit/useStore";
import { guessCount, restsOnGuesses } from "./planSummary";

/** The plan in a few sentences: how much goes where, what the tape should read then, and whether that rests on guesses. */
export function PlanSummary({ plan }: { readonly plan: Plan }) {
  const { write } = useLengths();
  if (plan.pieces.length === 0) {
    return <p className="lead">{plan.shortfalls.length === 0 ? planningWords.nothing : planningWords.nothingShort}</p>;
  }
  const guesses = guessCount(plan);
  const { agreement, agreementBut, holds } = planningWords;
  const sentence = plan.shortfalls.length === 0 ? agreement : agreementBut;
  return (
    <>
      <p className="lead">
        {planningWords.pieces(plan.pieces.length, plan.shapesToCut)}{" "}
        {sentence(write(tapeAgreement), restsOnGuesses(plan) ? holds.guessesAndBatting : holds.batting)}
      </p>
      {guesses > 0 ? <p>{planningWords.guesses(guesses)}</p> : null}
    </>
  );
}
