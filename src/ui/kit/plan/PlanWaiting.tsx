import { BattingLine } from "../batting/BattingLine";
import { firstContradiction, FirstProblem } from "../measure/MeasureProblems";
import { placeAddress } from "../place";
import { measurementInSentence } from "../../../text/measurements";
import { planningWords } from "../../../text/planning";
import { useDerived } from "../useDerived";
import { useOpenDemo } from "../shelf/useDemo";
import { doorWords } from "../../../text/workroom";

/** No plan yet: what is missing, and where to go for it. */
export function PlanWaiting() {
  const { problems } = useDerived();
  const openDemo = useOpenDemo();
  const missing = problems.measurements.filter(({ code }) => code === "missing");
  const ofBody = missing.filter(({ whose }) => whose === "body").flatMap(({ names }) => names);
  const ofForm = missing.some(({ whose }) => whose === "form");
  const wrong = firstContradiction(problems.measurements, "body") ?? firstContradiction(problems.measurements, "form");
  return (
    <div className="place-head stack">
      <h1>{planningWords.waitingTitle}</h1>
      {ofBody.length > 0 ? (
        <>
          <p className="lead">{planningWords.waitingFor(ofBody.map((name) => measurementInSentence(name)))}</p>
          <a className="patch patch-main" href={placeAddress("body")}>
            {planningWords.measureThem}
          </a>
        </>
      ) : null}
      {ofForm ? (
        <>
          <p className="lead">{planningWords.waitingForm}</p>
          <a className="patch" href={placeAddress("form")}>
            {planningWords.describeForm}
          </a>
        </>
      ) : null}
      {wrong === undefined ? null : (
        <>
          <p className="lead">{planningWords.contradiction}</p>
          <FirstProblem problem={wrong} />
          <a className="patch" href={placeAddress(wrong.whose, wrong.names[0])}>
            {planningWords.measureThem}
          </a>
        </>
      )}
      {problems.batting.length > 0 ? (
        <>
          <p className="lead">{planningWords.noBatting}</p>
          <BattingLine plan={null} />
        </>
      ) : null}
      <button type="button" className="patch patch-plain" onClick={openDemo}>
        {doorWords.demo}
      </button>
    </div>
  );
}
