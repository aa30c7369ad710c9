import { useState } from "react";
import type { JobSteps } from "../../../app/steps/plannedSteps";
import type { Step } from "../../../app/steps/step";
import { stepMinutes } from "../../../app/steps/stepMinutes";
import { type SessionLength, sessionLengths, sessionPlan } from "../../../app/classView/sessionPlan";
import type { ClassView } from "../../../app/classView/classView";
import { classControls, durationText, sessionActs, sessionWords } from "../../../text/classView";
import { numberedName } from "../../../text/pieces";
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
              {durationText(length)}
            </button>
          ))}
        </fieldset>
        <button type="button" className="patch" onClick={timer.toggle}>
          {timer.isRunning ? sessionWords.pause : sessionWords.start}
        </button>
        <button type="button" className="patch" onClick={onClose}>
          {classControls.closeKeys}
        </button>
      </div>
      <p>
        <strong>
          {steps.length === 0 ? sessionWords.nothing : isLonger ? sessionWords.longer(sum) : sessionWords.sum(sum)}
        </strong>
      </p>
      <ol className="class-session-steps">
        {byPiece(steps).map((together, i) => (
          // A job may come to the same step twice.
          <li key={`${together[0].do}${String(i)}`}>
            <span>{rowText(together, view)}</span>{" "}
            <span>{durationText(together.reduce((sum, step) => sum + stepMinutes(step), 0))}</span>
          </li>
        ))}
      </ol>
    </ClassPanel>
  );
}

type Together = readonly [Step, ...Step[]];

/** Steps that follow each other with one piece are one line: a class reads all of them from the back row. */
function byPiece(steps: readonly Step[]): readonly Together[] {
  const rows: [Step, ...Step[]][] = [];
  for (const step of steps) {
    const last = rows.at(-1);
    if (last !== undefined && isWith(last[0], step)) last.push(step);
    else rows.push([step]);
  }
  return rows;
}

const isWith = ({ piece }: Step, step: Step): boolean =>
  piece !== null && (step.do === "carry-lines" || step.piece?.id === piece.id);

function rowText(together: Together, view: ClassView): string {
  const [{ piece }] = together;
  return piece === null || together.length === 1
    ? together.map((step) => classSaid(view, step).headline).join(" ")
    : `${numberedName(piece)}: ${together.map((step) => sessionActs[step.do] ?? classSaid(view, step).headline).join(", ")}`;
}
