import { useState } from "react";
import type { JobSteps } from "../../../app/steps/plannedSteps";
import { stepMinutes } from "../../../app/steps/stepMinutes";
import { type SessionLength, sessionLengths, sessionPlan } from "../../../app/classView/sessionPlan";
import type { ClassView } from "../../../app/classView/classView";
import { classControls, durationText, sessionWords } from "../../../text/classView";
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
  const { steps, minutes, isLonger } = sessionPlan(job, view.place - 1, lasts);
  const sum = durationText(minutes);
  return (
    <ClassPanel id="class-session-title" title={sessionWords.title} className="class-session" onClose={onClose}>
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
            {durationText(length)}
          </button>
        ))}
      </fieldset>
      <p>
        <strong>
          {steps.length === 0 ? sessionWords.nothing : isLonger ? sessionWords.longer(sum) : sessionWords.sum(sum)}
        </strong>
      </p>
      <ol className="class-session-steps">
        {steps.map((step, i) => (
          // A job may come to the same step twice.
          <li key={`${step.do}${String(i)}`}>
            <span>{classSaid(view, step).headline}</span> <span>{durationText(stepMinutes(step))}</span>
          </li>
        ))}
      </ol>
      <div className="row">
        <button type="button" className="patch" onClick={timer.toggle}>
          {timer.isRunning ? sessionWords.pause : sessionWords.start}
        </button>
        <button type="button" className="patch" onClick={onClose}>
          {classControls.closeKeys}
        </button>
      </div>
    </ClassPanel>
  );
}
