import { useMemo } from "react";
import { torsoReadings } from "../../../core/body/levelReadings";
import type { Reading } from "../../../core/body/reading";
import type { LevelName } from "../../../core/body/vocabulary";
import type { Plan, PlannedLevel } from "../../../core/plan/plan";
import { tapeAgreement } from "../../../core/tolerances";
import { mm, type Millimetres } from "../../../core/units";
import { tapeParts } from "../../../app/progress/padProgress";
import { Drawing } from "../../drawing/Drawing";
import { lengthWriter } from "../../../text/lengthWriter";
import { sectionScene } from "../../drawing/sectionScene";
import { formStanding } from "../../../app/session/formStanding";
import { LengthFigure } from "../../kit/LengthFigure";
import { pageAddress } from "../../kit/page";
import { levelWords } from "../../../text/pictures";
import { listed, planningWords } from "../../../text/planning";
import { useDerived } from "../../kit/useDerived";
import { useFitting, useLengths } from "../../kit/useStore";
import { HeadCells } from "../../kit/HeadCells";

/** Every level from the top down: its section to scale, and what the tape reads on the body, on the form and after. */
export function PlanLevels({ plan }: { readonly plan: Plan }) {
  const fitting = useFitting();
  const { planning } = useDerived();
  const isFormMeasured = formStanding(fitting, planning).kind === "measured";
  return (
    <>
      <GuessedSides plan={plan} />
      <ul className="levels">
        {plan.levels.map((level) => (
          <li key={level.name} className="level">
            <h3>{capital(levelWords[level.name])}</h3>
            <LevelSection plan={plan} level={level} />
            <FormHeight level={level} />
            <LevelTable level={level} bare={plan.bareForm[level.name]} isFormMeasured={isFormMeasured} />
          </li>
        ))}
      </ul>
    </>
  );
}

/** Where nobody measured a breadth, what the pictures show at the sides is a guess, and the way to put a reading there. */
function GuessedSides({ plan }: { readonly plan: Plan }) {
  const { body } = useFitting();
  const guessed = plan.levels.map(({ name }) => name).filter((name) => body[`${name}Breadth`] === undefined);
  const [first] = guessed;
  if (first === undefined) return null;
  return (
    <p>
      {planningWords.sides(listed(guessed.map((name) => levelWords[name])))}{" "}
      <a href={pageAddress("body", `${first}Breadth`)}>{planningWords.measureBreadth}</a>
    </p>
  );
}

/** The form is compared at the body's height, which is seldom just where the form has its own level: said where it is not. */
function FormHeight({ level: { name, depthBelowNape } }: { readonly level: PlannedLevel }) {
  const { planning } = useDerived();
  const { write } = useLengths();
  const form = planning.kind === "planned" ? planning.form : null;
  const own = useMemo(
    () => (form === null ? null : torsoReadings(form).levels[name].depthBelowNape.value),
    [form, name],
  );
  if (own === null || Math.abs(depthBelowNape.value - own) <= tapeAgreement) return null;
  const off = write(mm(Math.abs(depthBelowNape.value - own)));
  return <p className="quiet small">{planningWords.atBodyHeight(off, depthBelowNape.value > own, levelWords[name])}</p>;
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

interface LevelSectionProps {
  readonly plan: Plan;
  readonly level: PlannedLevel;
  readonly pinned?: number;
}

function LevelSection({ plan, level, pinned }: LevelSectionProps) {
  const { unit, step } = useLengths();
  const scene = useMemo(() => {
    const seamShift = plan.seamShifts.find((shift) => shift.level === level.name);
    return sectionScene({
      level,
      pieces: plan.pieces,
      lengths: lengthWriter(unit, step),
      ...(pinned === undefined ? {} : { pinned }),
      ...(seamShift === undefined ? {} : { seamShift }),
    });
  }, [plan, level, pinned, unit, step]);
  return <Drawing scene={scene} />;
}

interface LevelTableProps {
  readonly level: PlannedLevel;
  readonly bare: Plan["bareForm"][LevelName];
  /** Whether the form's own girths were read; a table only supposes them. */
  readonly isFormMeasured: boolean;
}

function LevelTable({ level, bare, isFormMeasured }: LevelTableProps) {
  const { tableHead, rows, formSupposed } = planningWords;
  return (
    <table className="figures-table">
      <thead>
        <tr>
          <td />
          <HeadCells words={[tableHead.body, isFormMeasured ? tableHead.form : formSupposed, tableHead.add]} />
        </tr>
      </thead>
      <tbody>
        {tapeParts.map((part) => (
          <tr key={part}>
            <th scope="row">{rows[part]}</th>
            <td>
              <KnownFigure value={level.body[part].value} known={level.body[part].kind} />
            </td>
            <td>
              <KnownFigure value={bare[part]} known={isFormMeasured ? level.form[part].kind : "estimated"} />
            </td>
            <td>
              <Figure value={mm(Math.max(0, level.predicted[part] - bare[part]))} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Figure({ value }: { readonly value: Millimetres }) {
  const { step } = useLengths();
  return <LengthFigure length={value} step={step} unitShown={false} />;
}

/** A figure that was read stands plain; any other on a dashed line, with the word for it beneath. */
function KnownFigure({ value, known }: { readonly value: Millimetres; readonly known: Reading["kind"] }) {
  const { step } = useLengths();
  return (
    <>
      <LengthFigure length={value} step={step} estimated={known !== "measured"} unitShown={false} />
      {known === "measured" ? null : <span className="figures-known">{planningWords.guessed}</span>}
    </>
  );
}
