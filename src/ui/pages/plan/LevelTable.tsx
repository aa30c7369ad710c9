import type { Reading } from "../../../core/body/reading";
import type { LevelName } from "../../../core/body/vocabulary";
import type { Plan, PlannedLevel } from "../../../core/plan/plan";
import { mm, type Millimetres } from "../../../core/units";
import { tapeParts } from "../../../app/progress/padProgress";
import { planningWords } from "../../../text/planning";
import { HeadCells } from "../../kit/HeadCells";
import { LengthFigure } from "../../kit/LengthFigure";
import { useLengths } from "../../kit/useStore";

interface LevelTableProps {
  readonly level: PlannedLevel;
  readonly bare: Plan["bareForm"][LevelName];
  /** Whether the form's own girths were read; a table only supposes them. */
  readonly isFormMeasured: boolean;
}

/** What the tape reads at a level on the body and on the form now, and what there is to add. */
export function LevelTable({ level, bare, isFormMeasured }: LevelTableProps) {
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
