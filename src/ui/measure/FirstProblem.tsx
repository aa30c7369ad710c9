import { isContradiction, type MeasurementProblem } from "../../core/body/plausibility";
import { measurementProblemText } from "../text/problems";
import { unbroken } from "../text/shownLength";
import { useLengths } from "../useStore";
import { UnitSlipButton } from "./UnitSlipButton";

/** The first reading that cannot be, in its own sentence, with what can be done about it at once. */
export function FirstProblem({ problem }: { readonly problem: MeasurementProblem }) {
  const { step } = useLengths();
  return (
    <div className="first-problem problem problem-contradiction">
      <p>{unbroken(measurementProblemText(problem, step))}</p>
      <UnitSlipButton problem={problem} />
    </div>
  );
}

/** What stands in the way of a plan, the first of it: a reading that cannot be; one that is missing is asked for elsewhere. */
export const firstContradiction = (
  problems: readonly MeasurementProblem[],
  whose: MeasurementProblem["whose"],
): MeasurementProblem | undefined =>
  problems.find((problem) => problem.whose === whose && problem.code !== "missing" && isContradiction(problem));
