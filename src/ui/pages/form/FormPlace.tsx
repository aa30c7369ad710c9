import { useDerived } from "../../kit/useDerived";
import { Cautions } from "../../kit/Cautions";
import { FormSizes } from "./FormSizes";
import { firstContradiction, FirstProblem } from "../../kit/measure/MeasureProblems";
import { MeasureChart } from "../../kit/measure/MeasureChart";
import { placeAddress } from "../../kit/place";
import { DraftNote } from "../../kit/plan/DraftNote";
import { formingWords } from "../../../text/forming";
import { measuringWords } from "../../../text/measuring";

/** The form: the size it is sold as, and what a tape says about it, which always wins. */
export function FormPlace() {
  const { planning, problems } = useDerived();
  const wrong = firstContradiction(problems.measurements, "form");
  return (
    <>
      <div className="place-head">
        <h1>{formingWords.title}</h1>
        <p className="lead">{formingWords.lead}</p>
      </div>
      <FormSizes />
      <section className="stitched">
        <h2>{measuringWords.formTitle}</h2>
        <p>{measuringWords.formLead}</p>
        {planning.kind === "planned" ? <DraftNote plan={planning.plan} /> : null}
        <Cautions at="handlingForm" />
        {wrong === undefined ? null : <FirstProblem problem={wrong} />}
        <MeasureChart
          whose="form"
          enough={
            planning.kind === "planned" ? (
              <li className="enough">
                <a className="patch" href={placeAddress("plan")}>
                  {measuringWords.toPlan}
                </a>
              </li>
            ) : null
          }
        />
      </section>
    </>
  );
}
