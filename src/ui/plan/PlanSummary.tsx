import type { Plan } from "../../core/plan/plan";
import { tapeAgreement } from "../../core/tolerances";
import { formStanding } from "../form/formStanding";
import { placeAddress } from "../place";
import { measurementTexts } from "../text/measurements";
import { planningWords } from "../text/planning";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";
import { linesThing } from "./DraftNote";
import { deepestPlace, guessCount } from "./planSummary";
import { type WeightyGuess, weightiestGuess } from "./weightiestGuess";

/** The plan in a few sentences: how much goes where, what the tape should read then, and on which guesses that rests. */
export function PlanSummary({ plan }: { readonly plan: Plan }) {
  const { write } = useLengths();
  const weightiest = useWeightiestGuess(plan);
  if (plan.pieces.length === 0) return <p className="lead">{planningWords.nothing}</p>;
  const guesses = guessCount(plan);
  const { agreement, agreementBut, holds } = planningWords;
  const sentence = plan.shortfalls.length === 0 ? agreement : agreementBut;
  const restsOnGuesses = guesses > 0 || weightiest !== null;
  return (
    <>
      <p className="lead">
        {planningWords.summary(planningWords.pieces(plan.pieces.length), deepestPlace(plan))}{" "}
        {sentence(write(tapeAgreement), restsOnGuesses ? holds.guessesAndBatting : holds.batting)}
      </p>
      {guesses > 0 ? <p>{planningWords.guesses(guesses)}</p> : null}
      {weightiest === null ? null : <Weightiest guess={weightiest} isDraft={plan.basis === "draft"} />}
    </>
  );
}

function useWeightiestGuess(plan: Plan): WeightyGuess | null {
  const fitting = useFitting();
  const { planning } = useDerived();
  const { body, form } = fitting;
  return weightiestGuess(plan, { body, form, isFormKnown: formStanding(fitting, planning).kind === "measured" });
}

interface WeightiestProps {
  readonly guess: WeightyGuess;
  readonly isDraft: boolean;
}

/** The guess that weighs most, and the way to what puts a reading in its place: of a form, its lines as long as they are open. */
function Weightiest({ guess: { whose, name, spread }, isDraft }: WeightiestProps) {
  const { write } = useLengths();
  const { label } = measurementTexts[name];
  return (
    <p>
      {planningWords.weightiest(whose, label.charAt(0).toLowerCase() + label.slice(1), write(spread))}{" "}
      <a href={whose === "form" && isDraft ? placeAddress("padding", linesThing) : placeAddress(whose, name)}>
        {planningWords.measureIt}
      </a>
    </p>
  );
}
