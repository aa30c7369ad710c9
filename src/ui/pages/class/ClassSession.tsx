import { useState } from "react";
import type { JobSteps } from "../../../app/steps/plannedSteps";
import { stepMinutes } from "../../../app/steps/stepMinutes";
import {
  minutesLeft,
  type SessionLength,
  type SessionPlan,
  sessionDays,
  sessionLengths,
  stepsByPiece,
} from "../../../app/classView/sessionPlan";
import type { ClassView } from "../../../app/classView/classView";
import { durationText, sessionWords } from "../../../text/classView";
import { sessionRowText } from "../../../text/sessionSheet";
import { ClassPanel } from "./ClassPanel";
import { classSaid } from "./ClassWords";
import type { ClassTimer } from "./useClassTimer";

interface SessionProps {
  readonly job: JobSteps;
  readonly view: ClassView;
  readonly timer: ClassTimer;
  readonly onClose: () => void;
}

/** What fits into this class, from the step at hand to a place where the work may be left, with the minutes of each step. */
export function ClassSession({ job, view, timer, onClose }: SessionProps) {
  const [lasts, setLasts] = useState<SessionLength>(90);
  const days = sessionDays(job, view.place - 1, lasts);
  return (
    <ClassPanel id="class-session-title" title={sessionWords.title} className="class-session" onClose={onClose}>
      <div className="row">
        <fieldset className="class-group">
          <legend className="unseen">{sessionWords.lasts}</legend>
          {sessionLengths.map((length) => (
            <button
              key={length}
              type="button"
              className="patch"
              aria-pressed={length === lasts}
              onClick={() => setLasts(length)}
            >
              {sessionWords.length(length)}
            </button>
          ))}
        </fieldset>
        <button type="button" className="patch" onClick={timer.toggle}>
          {timer.isRunning ? sessionWords.pause : sessionWords.start}
        </button>
      </div>
      {days.map((day, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: days stay where they are.
        <Day key={i} plan={day} number={days.length > 1 ? i + 1 : null} view={view} />
      ))}
      <p>{sessionWords.total(durationText(minutesLeft(job, view.place - 1)))}</p>
    </ClassPanel>
  );
}

interface DayProps {
  readonly plan: SessionPlan;
  /** Null where the class has one day. */
  readonly number: number | null;
  readonly view: ClassView;
}

function Day({ plan: { steps, minutes, isLonger, toNextStop }, number, view }: DayProps) {
  const sum = durationText(minutes);
  return (
    <>
      {number === null ? null : <h3>{sessionWords.day(number, sum)}</h3>}
      <p>
        <strong>
          {steps.length === 0 ? sessionWords.nothing : isLonger ? sessionWords.longer(sum) : sessionWords.sum(sum)}
        </strong>{" "}
        {toNextStop === null || isLonger || number !== null ? null : sessionWords.next(durationText(toNextStop))}
      </p>
      <ol className="class-session-steps">
        {stepsByPiece(steps).map((together, i) => (
          // A job may come to the same step twice.
          <li key={`${together[0].do}${String(i)}`}>
            <span>{sessionRowText(together, (step) => classSaid(view, step).headline, false)}</span>{" "}
            <span>{durationText(together.reduce((sum, step) => sum + stepMinutes(step), 0))}</span>
          </li>
        ))}
      </ol>
    </>
  );
}
