import { isContradiction } from "../../../core/body/plausibility";
import { UnitSlipButton } from "../../kit/measure/MeasureProblems";
import { placeAddress } from "../../kit/place";
import { measurementProblemText } from "../../../text/problems";
import { planningWords } from "../../../text/planning";
import { unbroken } from "../../../text/shownLength";
import { useDerived } from "../../kit/useDerived";
import { useLengths } from "../../kit/useStore";

/** Figures that are possible and unusual, asked about before anything is cut by them, each with the way there. */
export function PlanChecks() {
  const { problems } = useDerived();
  const { step } = useLengths();
  const asked = problems.measurements.filter((problem) => problem.code !== "missing" && !isContradiction(problem));
  if (asked.length === 0) return null;
  return (
    <ul className="problems">
      {asked.map((problem) => (
        <li key={`${problem.whose}${problem.code}${problem.names.join()}`} className="problem problem-pleaseCheck">
          {unbroken(measurementProblemText(problem, step))} <UnitSlipButton problem={problem} />{" "}
          <a href={placeAddress(problem.whose, problem.names[0])}>{planningWords.measureThem}</a>
        </li>
      ))}
    </ul>
  );
}
