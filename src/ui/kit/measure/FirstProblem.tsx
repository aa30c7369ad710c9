import type { MeasurementName } from "../../../core/body/vocabulary";
import { isContradiction, type MeasurementProblem } from "../../../core/body/plausibility";
import { measurementProblemText } from "../../../text/problems";
import { unbroken } from "../../../text/shownLength";
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

/** What stands in the way of a plan: readings that cannot be; one that is missing is asked for elsewhere. */
const contradictions = (problems: readonly MeasurementProblem[], whose: MeasurementProblem["whose"]) =>
  problems.filter((problem) => problem.whose === whose && problem.code !== "missing" && isContradiction(problem));

export const firstContradiction = (
  problems: readonly MeasurementProblem[],
  whose: MeasurementProblem["whose"],
): MeasurementProblem | undefined => contradictions(problems, whose)[0];

/** Whether one measurement is among what cannot be. */
export const isContradicted = (
  problems: readonly MeasurementProblem[],
  whose: MeasurementProblem["whose"],
  name: MeasurementName,
): boolean => contradictions(problems, whose).some(({ names }) => names.includes(name));
