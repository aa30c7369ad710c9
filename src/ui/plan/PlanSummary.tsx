import type { Plan } from "../../core/plan/plan";
import { tapeAgreement } from "../../core/tolerances";
import { formStanding } from "../form/formStanding";
import { placeAddress } from "../place";
import { measurementTexts } from "../text/measurements";
import { planningWords } from "../text/planning";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";
import { deepestPlace, guessCount } from "./planSummary";
import { weightiestGuess } from "./weightiestGuess";

/** The plan in a few sentences: how much goes where, what the tape should read then, and on which guesses that rests. */
export function PlanSummary({ plan }: { readonly plan: Plan }) {
  const { write } = useLengths();
  if (plan.pieces.length === 0) return <p className="lead">{planningWords.nothing}</p>;
  const guesses = guessCount(plan);
  const { agreement, agreementBut, holds } = planningWords;
  const sentence = plan.shortfalls.length === 0 ? agreement : agreementBut;
  return (
    <>
      <p className="lead">
        {planningWords.summary(planningWords.pieces(plan.pieces.length), deepestPlace(plan))}{" "}
        {sentence(write(tapeAgreement), guesses > 0 ? holds.guessesAndBatting : holds.batting)}
      </p>
      {guesses > 0 ? <p>{planningWords.guesses(guesses)}</p> : null}
      <Weightiest plan={plan} />
    </>
  );
}

/** The guess that weighs most, and the way to the field that puts a reading in its place. */
function Weightiest({ plan }: { readonly plan: Plan }) {
  const fitting = useFitting();
  const { planning } = useDerived();
  const { write } = useLengths();
  const { body, form } = fitting;
  const guess = weightiestGuess(plan, { body, form, isFormKnown: formStanding(fitting, planning).kind === "measured" });
  if (guess === null) return null;
  const { label } = measurementTexts[guess.name];
  return (
    <p>
      {planningWords.weightiest(guess.whose, label.charAt(0).toLowerCase() + label.slice(1), write(guess.spread))}{" "}
      <a href={placeAddress(guess.whose, guess.name)}>{planningWords.measureIt}</a>
    </p>
  );
}
