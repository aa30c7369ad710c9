import type { MeasurementName } from "../../../core/body/vocabulary";
import { measurementProblemText } from "../../../text/problems";
import { unbroken } from "../../../text/shownLength";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";
import { UnitSlipButton } from "./UnitSlipButton";

/** What the other readings say about this one: what cannot be, and what is only worth a second look. */
export interface MeasureProblemsProps {
  readonly whose: "body" | "form";
  readonly name: MeasurementName;
  /** So that the field is described by them. */
  readonly id: string;
}

export function MeasureProblems({ whose, name, id }: MeasureProblemsProps) {
  const { problems } = useDerived();
  const { step } = useLengths();
  const mine = problems.measurements.filter(
    (problem) => problem.whose === whose && problem.code !== "missing" && problem.names.includes(name),
  );
  return (
    <div role="status" id={id}>
      <ul className="problems">
        {mine.map((problem) => (
          <li key={problem.code} className={`problem problem-${problem.severity}`}>
            {unbroken(measurementProblemText(problem, step))} <UnitSlipButton problem={problem} />
          </li>
        ))}
      </ul>
    </div>
  );
}
