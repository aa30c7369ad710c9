import { useMemo, useState } from "react";
import { isBare } from "../../../app/progress/isBare";
import { linesAtForm } from "../../../app/progress/linesAtForm";
import type { PadProgress } from "../../../app/progress/padProgress";
import type { CurrentStep } from "../../../app/steps/currentStep";
import { route, type RouteStop } from "../../../app/steps/route";
import type { Plan } from "../../../core/plan/plan";
import { isLogFull } from "../../../document/fitting";
import { setAsideCount } from "../../../document/keptFitting";
import { paddingWords } from "../../../text/padding";
import { pieceName } from "../../../text/plan";
import { stopWords } from "../../../text/stops";
import { goTo, useAskedThing } from "../../kit/page";
import { linesThing, PlanWaiting } from "../../kit/plan/PlanWaiting";
import { useAnswer } from "../../kit/useAnswer";
import { useDerived } from "../../kit/useDerived";
import { useFitting } from "../../kit/useStore";
import { LinesStop } from "./LinesStop";
import { StepStop } from "./StepStop";
import { StopFold } from "./StopFold";

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

/** A stop before the first piece: the form made ready, the lines, the trial. */
interface Preparation {
  readonly name: keyof typeof stopWords.prepared;
  readonly standing: "done" | "now" | "toCome";
}

interface StopRouteProps {
  readonly preparations: readonly Preparation[];
  readonly stops: readonly RouteStop[];
  /** The piece that is looked at; null where the next step is shown. */
  readonly looked: string | null;
  readonly onLook: (pieceId: string | null) => void;
}

/** The way of the whole job: small squares before the first piece, one circle a piece; done is filled, now is yellow with its number. */
function StopRoute({ preparations, stops, looked, onLook }: StopRouteProps) {
  return (
    <div className="route">
      <ol className="route-before" aria-label={stopWords.preparations}>
        {preparations.map(({ name, standing }) => (
          <li
            key={name}
            className={`route-square route-${standing}`}
            aria-current={standing === "now" ? "step" : undefined}
          >
            <span className="unseen">
              {stopWords.prepared[name]}: {standing === "done" ? stopWords.isDone : stopWords.stands[standing]}
            </span>
          </li>
        ))}
      </ol>
      <ol className="route-pieces" aria-label={stopWords.route}>
        {stops.map(({ piece, standing }, i) => (
          <li key={piece.id} className={`route-${standing}`}>
            <button
              type="button"
              aria-current={standing === "now" ? "step" : undefined}
              aria-pressed={looked === piece.id}
              aria-label={`${i + 1}. ${pieceName(piece)}: ${stopWords.stands[standing]}`}
              onClick={() => onLook(looked === piece.id || (standing === "now" && looked === null) ? null : piece.id)}
            >
              <span className="route-stop" aria-hidden>
                {standing === "now" || looked === piece.id ? i + 1 : ""}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </div>
  );
}

/** What is the matter with the log of work: it is full, or entries of it could not be used. */
function LogNotes() {
  const { work, extra } = useFitting();
  const setAside = setAsideCount({ extra });
  return (
    <>
      {isLogFull(work) ? <p className="caution">{paddingWords.logFull}</p> : null}
      {setAside === 0 ? null : <p className="caution">{paddingWords.setAside(setAside)}</p>}
    </>
  );
}
