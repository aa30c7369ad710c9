import { upperFirst } from "../../../text/upperFirst";
import { useMemo, useState } from "react";
import { torsoReadings } from "../../../core/body/levelReadings";
import type { LevelName } from "../../../core/body/vocabulary";
import type { Plan, PlannedLevel } from "../../../core/plan/plan";
import { tapeAgreement } from "../../../core/tolerances";
import { mm } from "../../../core/units";
import { Drawing } from "../../drawing/Drawing";
import { lengthWriter } from "../../../text/lengthWriter";
import { sectionScene } from "../../drawing/sectionScene";
import { formStanding } from "../../../app/session/formStanding";
import { pageAddress } from "../../kit/page";
import { levelWords } from "../../../text/pictures";
import { listed, planningWords } from "../../../text/planning";
import { LevelTable } from "./LevelTable";
import { useDerived } from "../../kit/useDerived";
import { useFitting, useLengths } from "../../kit/useStore";
import { Segments } from "../../kit/Segments";

/** One level at a time, of all that can be chosen: its section to scale, and what the tape reads on the body, on the form and after. */
export function PlanLevels({ plan }: { readonly plan: Plan }) {
  const fitting = useFitting();
  const { planning } = useDerived();
  const [chosen, setChosen] = useState<LevelName>("waist");
  const level = plan.levels.find(({ name }) => name === chosen) ?? plan.levels[0];
  const isFormMeasured = formStanding(fitting, planning).kind === "measured";
  if (level === undefined) return null;
  return (
    <>
      <fieldset className="plan-level-choice">
        <legend className="unseen">{planningWords.chooseLevel}</legend>
        <Segments
          choices={plan.levels.map(({ name }) => ({
            key: name,
            words: upperFirst(levelWords[name]),
            isChosen: name === level.name,
            choose: () => setChosen(name),
          }))}
        />
      </fieldset>
      <div className="level">
        <LevelSection plan={plan} level={level} />
        <FormHeight level={level} />
        <LevelTable level={level} bare={plan.bareForm[level.name]} isFormMeasured={isFormMeasured} />
        <GuessedSides plan={plan} />
      </div>
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

interface LevelSectionProps {
  readonly plan: Plan;
  readonly level: PlannedLevel;
}

function LevelSection({ plan, level }: LevelSectionProps) {
  const { unit, step } = useLengths();
  const scene = useMemo(() => {
    const seamShift = plan.seamShifts.find((shift) => shift.level === level.name);
    return sectionScene({
      level,
      pieces: plan.pieces,
      lengths: lengthWriter(unit, step),
      ...(seamShift === undefined ? {} : { seamShift }),
    });
  }, [plan, level, unit, step]);
  return <Drawing scene={scene} />;
}
