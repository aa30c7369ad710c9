import { isContradiction, type MeasurementProblem } from "../../../core/body/plausibility";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { measuringWords } from "../../../text/measuring";
import { measurementProblemText } from "../../../text/problems";
import { unbroken } from "../../../text/shownLength";
import { useDoAndSay } from "../shelf/useDone";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";

/** What the other readings say about this one: what cannot be, and what is only worth a second look. */
interface MeasureProblemsProps {
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

/** Where readings look as if they were typed in the wrong unit: one tap reads them in the other; undo takes it back. */
export function UnitSlipButton({ problem }: { readonly problem: MeasurementProblem }) {
  const doAndSay = useDoAndSay();
  const unit = slippedFrom[problem.code];
  if (unit === undefined) return null;
  const reread = () =>
    doAndSay(
      { does: "reread", slipped: { whose: problem.whose, names: problem.names, unit } },
      measuringWords.reread[unit],
    );
  return (
    <button type="button" className="patch" onClick={reread}>
      {measuringWords.theyAre(unit, problem.names.length)}
    </button>
  );
}

/** The unit such readings were taken in. */
const slippedFrom: { readonly [code in MeasurementProblem["code"]]?: "cm" | "in" } = {
  centimetresAsInches: "cm",
  inchesAsCentimetres: "in",
};
