import { Cautions } from "../../kit/Cautions";
import { pageAddress } from "../../kit/page";
import { firstContradiction, FirstProblem } from "../../kit/measure/MeasureProblems";
import { MeasureChart } from "../../kit/measure/MeasureChart";
import { NextQuestions } from "../../kit/plan/PlanWaiting";
import { measuringWords } from "../../../text/measuring";
import { useDerived } from "../../kit/useDerived";
import { useDispatch, useFitting } from "../../kit/useStore";

/** The body: three girths first, then whatever makes the plan more this body's own. */
export function BodyPage() {
  const { title } = useFitting();
  const dispatch = useDispatch();
  return (
    <>
      <div className="place-head body-head apart">
        <div>
          <h1>{measuringWords.bodyTitle}</h1>
          <p className="lead">{measuringWords.bodyLead}</p>
        </div>
        <label className="name-field">
          <span>{measuringWords.name}</span>
          <input
            type="text"
            className="line-input"
            autoComplete="off"
            maxLength={200}
            value={title}
            onChange={(event) => dispatch({ does: "rename", title: event.target.value })}
          />
        </label>
      </div>
      <Cautions at="measuringBody" />
      <MeasureChart whose="body" enough={<Enough />} />
    </>
  );
}

/** Said once the three girths are in, with the ways on; where readings cannot all be right, that is what is said. */
function Enough() {
  const { planning, problems } = useDerived();
  const wrong = firstContradiction(problems.measurements, "body");
  if (wrong !== undefined) {
    return (
      <li className="enough">
        <FirstProblem problem={wrong} />
      </li>
    );
  }
  return (
    <li className="enough">
      <p>{planning.kind === "planned" ? measuringWords.enough : measuringWords.girthsIn}</p>
      {planning.kind === "planned" ? <NextQuestions plan={planning.plan} /> : null}
      <div className="row">
        <a className="patch" href={pageAddress("form")}>
          {measuringWords.toForm}
        </a>
        {planning.kind === "planned" ? (
          <a className="patch" href={pageAddress("plan")}>
            {measuringWords.toPlan}
          </a>
        ) : null}
      </div>
    </li>
  );
}
