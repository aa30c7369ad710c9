import { useMemo, useState } from "react";
import { isBare } from "../../../app/progress/isBare";
import { linesAtForm } from "../../../app/progress/linesAtForm";
import type { PadProgress } from "../../../app/progress/padProgress";
import { route, type RouteStop } from "../../../app/steps/route";
import type { CurrentStep } from "../../../app/steps/currentStep";
import type { Plan } from "../../../core/plan/plan";
import { useAnswer } from "../../kit/useAnswer";
import { goTo, useAskedThing } from "../../kit/place";
import { linesThing } from "../../kit/plan/DraftNote";
import { PlanWaiting } from "../../kit/plan/PlanWaiting";
import { stopWords } from "../../../text/stops";
import { useDerived } from "../../kit/useDerived";
import { useFitting } from "../../kit/useStore";
import { LinesStop } from "./LinesStop";
import { LogNotes } from "./LogNotes";
import { StepStop } from "./StepStop";
import { StopFold } from "./StopFold";
import { type Preparation, StopRoute } from "./StopRoute";

/** Padding: the one next step, and nothing else to decide. */
export function PaddingPage() {
  const { planning, progress } = useDerived();
  if (planning.kind === "waiting" || progress === null) return <PlanWaiting />;
  return <Padding plan={planning.plan} progress={progress} />;
}

function Padding({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const fitting = useFitting();
  const { answer, isWorking } = useAnswer("step");
  const [looked, setLooked] = useState<string | null>(null);
  const lines = useMemo(() => linesAtForm(plan, fitting), [plan, fitting]);
  const isAsked = useAskedThing() === linesThing && isBare(fitting.work);
  const isAtLines = isAsked || lines.next.do !== "done";
  const stops = useMemo(() => (answer === null ? plannedStops(plan) : route(answer, fitting)), [answer, plan, fitting]);
  const piece = stops.find((stop) => stop.piece.id === looked)?.piece ?? null;
  return (
    <>
      <div className="padding-page" aria-busy={isWorking}>
        <LogNotes />
        <StopRoute
          preparations={preparations(lines.next.do, isAtLines, answer)}
          stops={stops}
          looked={looked}
          onLook={setLooked}
        />
        {isAtLines && piece === null ? (
          <LinesStop plan={plan} isAsked={isAsked} onLater={() => goTo("plan")} />
        ) : answer === null || (isWorking && beforePieces.has(answer.step.do)) ? (
          <p className="padding-working">{stopWords.working}</p>
        ) : (
          <StepStop current={answer} isWorking={isWorking} looked={piece} onBack={() => setLooked(null)} />
        )}
      </div>
      <StopFold plan={plan} progress={progress} />
    </>
  );
}

/** Shown by the lines themselves, at once: an answer that still tells of them is out of date. */
const beforePieces: ReadonlySet<CurrentStep["step"]["do"]> = new Set(["prepare-form", "mark-lines", "read-lines"]);

const plannedStops = ({ pieces }: Plan): readonly RouteStop[] =>
  pieces.map((piece) => ({ piece, standing: "toCome" as const }));

/** How far the work before the first piece has come. */
function preparations(
  lines: ReturnType<typeof linesAtForm>["next"]["do"],
  isAtLines: boolean,
  current: CurrentStep | null,
): readonly Preparation[] {
  const now = isAtLines
    ? lines === "prepare"
      ? 0
      : 1
    : current?.step.do === "prepare-form"
      ? 0
      : current?.step.do === "trial"
        ? 2
        : 3;
  return (["prepare", "lines", "trial"] as const).map((name, i) => ({
    name,
    standing: i < now ? "done" : i === now ? "now" : "toCome",
  }));
}
