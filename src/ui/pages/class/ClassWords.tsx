import { levelToMeasure } from "../../../app/progress/levelToMeasure";
import type { Step } from "../../../app/steps/step";
import { stepMinutes } from "../../../app/steps/stepMinutes";
import { levelNames } from "../../../core/body/vocabulary";
import { tapeStep } from "../../../core/lengthText";
import { onTarget } from "../../../core/tolerances";
import { mm } from "../../../core/units";
import { shortOf } from "../../../text/cautions";
import { stepCautions } from "../../../text/stepCautions";
import { levelWords } from "../../../text/pictures";
import { shownLength } from "../../../text/shownLength";
import { placeWithoutFigures, withoutFigures } from "../../../text/withoutFigures";
import { stepNoteWords } from "../../../text/stepNotes";
import { stepWords } from "../../../text/steps";
import { classControls, classWords, clockText, durationText, sessionWords } from "../../../text/classView";
import { LengthFigure } from "../../kit/LengthFigure";
import type { ClassPerson } from "../../../app/classView/classPeople";
import type { ClassView } from "../../../app/classView/classView";
import type { ClassTimer } from "./useClassTimer";

/** At the top of the class view: what is done now, how far the job has come, and whose plan this is. */
interface ClassHeadProps {
  readonly person: ClassPerson;
  readonly view: ClassView;
  readonly timer: ClassTimer;
}

export function ClassHead({ person, view, timer }: ClassHeadProps) {
  const { plan, step, place, count, pinned, isCovered, note } = view;
  const { headline, rest } = classSaid(view, step);
  const name = person.isMadeUp ? classWords.madeUp(person.name) : person.name;
  const care = shortOf(stepCautions[step.do] ?? []);
  const isSided = step.piece !== null && /left|right/i.test(step.piece.zone);
  return (
    <header className="class-head">
      <p className="class-whose">
        <span className="class-count">
          {classWords.step(place, count)}
          {note === null ? "" : `, ${stepNoteWords.mark}`}
        </span>
        {timer.seconds === null ? null : (
          <span className="class-count" role="timer">
            {sessionWords.timer(clockText(timer.seconds), durationText(stepMinutes(step)))}
          </span>
        )}
        {classWords.whose(name, isCovered)}
      </p>
      <ol className="class-pins" aria-hidden>
        {plan.pieces.map(({ id, order }) => (
          <li
            key={id}
            className="class-pin"
            data-state={id === step.piece?.id ? "now" : order <= pinned ? "on" : "waits"}
          />
        ))}
      </ol>
      <h1 className="class-action" style={{ fontSize: actSize(headline) }}>
        {headline}
      </h1>
      <p className="class-where">
        {[rest, isSided ? classWords.wearersSide : ""].filter((words) => words !== "").join(" ")}
        {care === "" ? null : <span className="class-care"> {care}</span>}
      </p>
    </header>
  );
}

/** A long act grows smaller until it fits on one line; on a screen that lies on its side never under an eighteenth of its height. */
const actSize = ({ length }: string): string =>
  `max(min(5.6vh, 6vw), min(9.4vh, 5.2vw, ${(200 / Math.max(1, length)).toFixed(2)}vw))`;

/** The dark foot, the same in every state: the reading to expect in its corner, and what comes next. */
export function ClassFoot({ view }: { readonly view: ClassView }) {
  const { next, unit, isCovered } = view;
  const expected = expectedReading(view);
  const step = tapeStep[unit];
  return (
    <div className="class-foot">
      {expected === null || isCovered ? (
        <p>{expected === null ? "" : classWords.figuresCovered}</p>
      ) : (
        <>
          <p className="class-foot-words">
            {classWords.shouldRead(levelWords[expected.level], view.step.piece === null)}
          </p>
          <p className="class-expected">
            <LengthFigure length={mm(expected.value)} step={step} />
          </p>
          <p>{classWords.tolerance(shownLength(onTarget, step))}</p>
        </>
      )}
      <p className="class-next">
        <span className="class-keys-hint">
          <kbd className="class-key">K</kbd> {classControls.keysHint}
        </span>
        {next === null ? null : (
          <>
            {classWords.comesNext} <strong>{classSaid(view, next).headline}</strong>
          </>
        )}
      </p>
    </div>
  );
}

/** After a piece the level it changes most; of a reading the level that is looked at. */
function expectedReading({ plan, step, level }: ClassView) {
  if (step.piece !== null) {
    const name = levelToMeasure(plan, step.piece);
    return { level: name, value: step.piece.readingsAfter[name].girth };
  }
  const asked = levelNames.find((name) => name === level.name && step.expected[`${name}Girth`] !== undefined);
  const value = asked === undefined ? undefined : step.expected[`${asked}Girth`];
  return asked === undefined || value === undefined ? null : { level: asked, value };
}

/** What the class view says of a step: its act as the headline, and the rest of the very same sentence. */
interface ClassSaid {
  readonly headline: string;
  readonly rest: string;
}

export function classSaid(
  { plan, unit, isCovered, facts }: Pick<ClassView, "plan" | "unit" | "isCovered" | "facts">,
  step: Step,
): ClassSaid {
  const lengths = tapeStep[unit];
  const [headline, rest] = stepWords(step, { lengths, levels: plan.levels, pieces: plan.pieces, facts });
  if (!isCovered) return { headline, rest };
  // Which measurements of a person contradict each other is nobody's business.
  if (step.do === "check") return { headline: classWords.checkCovered, rest: "" };
  const act = withoutFigures(headline);
  return {
    headline: act === "" ? classWords.tuneCovered : act,
    rest: nobodysFigures.has(step.do) ? rest : step.do === "pin" ? placeWithoutFigures(rest) : withoutFigures(rest),
  };
}

/** How tall the strip of the trial is and how far from an edge is basted are the same for everybody. */
const nobodysFigures: ReadonlySet<Step["do"]> = new Set(["trial", "baste"]);
