import { useMemo } from "react";
import type { LevelName } from "../../core/body/vocabulary";
import type { Reading } from "../../core/body/reading";
import type { Plan, PlannedLevel } from "../../core/plan/plan";
import { mm, type Millimetres } from "../../core/units";
import { tapeParts } from "../../app/padProgress";
import { Drawing } from "../drawing/Drawing";
import { lengthWriter } from "../drawing/lengthWriter";
import { sectionScene } from "../drawing/sectionScene";
import { LengthFigure } from "../LengthFigure";
import { levelWords } from "../text/pictures";
import { planningWords } from "../text/planning";
import { useLengths, useUnit } from "../useStore";

/** Every level from the top down: its section to scale, and what the tape reads on the body, on the form and after. */
export function PlanLevels({ plan }: { readonly plan: Plan }) {
  return (
    <ul className="levels">
      {plan.levels.map((level) => (
        <li key={level.name} className="level">
          <h3>{capital(levelWords[level.name])}</h3>
          <LevelSection plan={plan} level={level} />
          <LevelTable level={level} bare={plan.bareForm[level.name]} />
        </li>
      ))}
    </ul>
  );
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

interface LevelSectionProps {
  readonly plan: Plan;
  readonly level: PlannedLevel;
  readonly pinned?: number;
}

export function LevelSection({ plan, level, pinned }: LevelSectionProps) {
  const unit = useUnit();
  const scene = useMemo(() => {
    const seamShift = plan.seamShifts.find((shift) => shift.level === level.name);
    return sectionScene({
      level,
      pieces: plan.pieces,
      lengths: lengthWriter(unit),
      ...(pinned === undefined ? {} : { pinned }),
      ...(seamShift === undefined ? {} : { seamShift }),
    });
  }, [plan, level, pinned, unit]);
  return <Drawing scene={scene} />;
}

interface LevelTableProps {
  readonly level: PlannedLevel;
  readonly bare: Plan["bareForm"][LevelName];
}

function LevelTable({ level, bare }: LevelTableProps) {
  const { tableHead, rows } = planningWords;
  return (
    <table className="figures-table">
      <thead>
        <tr>
          <td />
          <th scope="col">{tableHead.body}</th>
          <th scope="col">{tableHead.form}</th>
          <th scope="col">{tableHead.add}</th>
        </tr>
      </thead>
      <tbody>
        {tapeParts.map((part) => (
          <tr key={part}>
            <th scope="row">{rows[part]}</th>
            <td>
              <ReadingFigure reading={level.body[part]} />
            </td>
            <td>
              <ReadingFigure reading={{ ...level.form[part], value: bare[part] }} />
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

function ReadingFigure({ reading }: { readonly reading: Reading }) {
  const { step } = useLengths();
  return (
    <>
      <LengthFigure length={reading.value} step={step} estimated={reading.kind === "estimated"} unitShown={false} />
      {reading.kind === "estimated" ? <span className="unseen"> {planningWords.guessed}</span> : null}
    </>
  );
}
