import { isBattingSupposed } from "../../../app/session/newFitting";
import { formStanding } from "../../../app/session/formStanding";
import { isContradiction } from "../../../core/body/plausibility";
import type { Plan } from "../../../core/plan/plan";
import { tapeAgreement } from "../../../core/tolerances";
import { planningWords } from "../../../text/planning";
import { measurementProblemText } from "../../../text/problems";
import { unbroken } from "../../../text/shownLength";
import { turnIt } from "../../../text/turnIt";
import { BattingLine } from "../../kit/batting/BattingLine";
import { UnitSlipButton } from "../../kit/measure/MeasureProblems";
import { pageAddress } from "../../kit/page";
import { DraftNote, NextQuestions, PlanWaiting } from "../../kit/plan/PlanWaiting";
import { useDerived } from "../../kit/useDerived";
import { useFitting, useLengths } from "../../kit/useStore";
import { PlanBoard } from "./PlanBoard";
import { BeforeCutting, PlanLimits, PlanPart } from "./PlanParts";
import { PlanLevels } from "./PlanLevels";

/** The plan on two screens: the pieces in their order, one of them open; and what comes before the cutting, with each level line. */
export function PlanPage() {
  const { planning } = useDerived();
  if (planning.kind === "waiting") return <PlanWaiting />;
  return <PlanOnTable plan={planning.plan} />;
}

/** The pieces, and below them what they rest on: each fills a tablet's screen. */
function PlanOnTable({ plan }: { readonly plan: Plan }) {
  const fitting = useFitting();
  const isBattingAsked = isBattingSupposed(fitting);
  const isBegun = fitting.work.some(({ did }) => did === "pinned");
  return (
    <>
      <div className="place-head stack">
        <h1>{planningWords.title}</h1>
        <PlanLimits plan={plan} />
        <PlanChecks />
        <DraftNote plan={plan} />
        <PlanSummary plan={plan} />
        <FormQuestion />
        {isBattingAsked ? <BattingLine plan={plan} /> : null}
      </div>
      <PlanBoard plan={plan} />
      <PlanDoing isFirm={plan.basis === "lines"} isBegun={isBegun} />
      <div className="plan-rests-on">
        <PlanPart title={planningWords.beforeCutting} className="stack">
          <BeforeCutting plan={plan} isBegun={isBegun} />
          {isBattingAsked ? null : <BattingLine plan={plan} />}
          <NextQuestions plan={plan} />
        </PlanPart>
        <PlanPart title={planningWords.levels}>
          <PlanLevels plan={plan} />
        </PlanPart>
      </div>
    </>
  );
}

/** What can be done with the plan. */
const PlanDoing = ({ isFirm, isBegun }: { readonly isFirm: boolean; readonly isBegun: boolean }) => (
  <div className="row">
    <a className={isFirm || isBegun ? "patch patch-main" : "patch"} href={pageAddress("padding")}>
      {isBegun ? planningWords.goOnPadding : planningWords.toPadding}
    </a>
    <a className="patch" href={pageAddress("print")}>
      {planningWords.toPrint}
    </a>
    <a className="patch" href={pageAddress("view3d")}>
      {turnIt}
    </a>
  </div>
);

/** Asked once, in one line, until the person says which form it is or lays a tape round it. */
function FormQuestion() {
  const fitting = useFitting();
  const { planning } = useDerived();
  const standing = formStanding(fitting, planning);
  if (standing.kind !== "supposed") return null;
  return (
    <p className="plan-question">
      <span>
        {planningWords.whichForm(standing.size)} <a href={pageAddress("form")}>{planningWords.sayWhichForm}</a>
      </span>
    </p>
  );
}

/** The plan in a few sentences: how much goes where, what the tape should read then, and whether that rests on guesses. */
function PlanSummary({ plan }: { readonly plan: Plan }) {
  const { write } = useLengths();
  if (plan.pieces.length === 0) {
    return <p className="lead">{plan.shortfalls.length === 0 ? planningWords.nothing : planningWords.nothingShort}</p>;
  }
  const guesses = guessCount(plan);
  const { agreement, agreementBut, holds } = planningWords;
  const sentence = plan.shortfalls.length === 0 ? agreement : agreementBut;
  return (
    <>
      <p className="lead">
        {planningWords.pieces(plan.pieces.length, plan.shapesToCut)}{" "}
        {sentence(write(tapeAgreement), restsOnGuesses(plan) ? holds.guessesAndBatting : holds.batting)}
      </p>
      {guesses > 0 ? <p>{planningWords.guesses(guesses)}</p> : null}
    </>
  );
}

/** How many of the body's girths and arcs in the plan are estimates. */
const guessCount = ({ levels }: Plan): number =>
  levels.flatMap(({ body }) => [body.girth, body.frontArc]).filter(({ kind }) => kind === "estimated").length;

/** Whether anything the plan stands on was not measured: of the body, of its heights, or of the bare form. */
const restsOnGuesses = ({ levels }: Plan): boolean =>
  levels
    .flatMap(({ depthBelowNape, body, form }) => [depthBelowNape, body.girth, body.frontArc, form.girth, form.frontArc])
    .some(({ kind }) => kind === "estimated");

/** Figures that are possible and unusual, asked about before anything is cut by them, each with the way there. */
function PlanChecks() {
  const { problems } = useDerived();
  const { step } = useLengths();
  const asked = problems.measurements.filter((problem) => problem.code !== "missing" && !isContradiction(problem));
  if (asked.length === 0) return null;
  return (
    <ul className="problems">
      {asked.map((problem) => (
        <li key={`${problem.whose}${problem.code}${problem.names.join()}`} className="problem problem-pleaseCheck">
          {unbroken(measurementProblemText(problem, step))} <UnitSlipButton problem={problem} />{" "}
          <a href={pageAddress(problem.whose, problem.names[0])}>{planningWords.measureThem}</a>
        </li>
      ))}
    </ul>
  );
}
