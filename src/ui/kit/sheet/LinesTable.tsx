import type { LineAtForm } from "../../../app/progress/linesAtForm";
import { levelNames } from "../../../core/body/vocabulary";
import { lineParts } from "../../../core/form/linePart";
import type { Plan, PlannedLevel } from "../../../core/plan/plan";
import { mm } from "../../../core/units";
import { linesSheetWords, linesWords } from "../../../text/linesAtForm";
import { levelWords } from "../../../text/pictures";
import { printingWords } from "../../../text/printing";
import { unitNames } from "../../../text/workroom";
import { HeadCells } from "../HeadCells";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";
import { SheetBox } from "./SheetPage";
import { writtenLength } from "../../../text/writtenLength";

export interface LinesProps {
  readonly plan: Plan;
  readonly lines: readonly LineAtForm[];
}

/** Every line with where it lies and what the tape reads on the person there, and room for the bare form, filled in where it was measured. */
export function LinesTable({ plan, lines }: LinesProps) {
  const { unit, step } = useLengths();
  const { lengths } = useDerived();
  const { head } = linesSheetWords;
  const nape = lengths?.form.measured.napeHeight;
  return (
    <>
      <p className="lines-nape">
        <strong>{linesWords.prepare.nape.label}:</strong>{" "}
        {nape === undefined ? <span className="sheet-write" /> : writtenLength(nape, step)}
      </p>
      <table className="sheet-table lines-table">
        <thead>
          <tr>
            <HeadCells words={[`${head.line}, ${unitNames[unit]}`, head.below, head.height, head.marked]} rows={2} />
            <th scope="colgroup" colSpan={2}>
              {head.person}
            </th>
            <th scope="colgroup" colSpan={4}>
              {head.form}
            </th>
          </tr>
          <tr>
            <HeadCells words={(["girth", "frontArc", ...lineParts] as const).map((part) => head.parts[part])} />
          </tr>
        </thead>
        <tbody>
          {levelNames.map((name) => (
            <LineRow
              key={name}
              planned={plan.levels.find((level) => level.name === name)}
              line={lines.find(({ level }) => level === name)}
              nape={nape}
            />
          ))}
        </tbody>
      </table>
      <p>{printingWords.guessNote}</p>
    </>
  );
}

interface LineRowProps {
  readonly planned: PlannedLevel | undefined;
  readonly line: LineAtForm | undefined;
  readonly nape: number | undefined;
}

function LineRow({ planned, line, nape }: LineRowProps) {
  const { step } = useLengths();
  if (planned === undefined || line === undefined) return null;
  const { name, depthBelowNape, body } = planned;
  const shown = ({ kind, value }: typeof depthBelowNape): string =>
    `${kind === "estimated" ? "≈ " : ""}${writtenLength(value, step, "bare")}`;
  return (
    <tr>
      <th scope="row">{levelWords[name]}</th>
      <td>
        <strong>{shown(depthBelowNape)}</strong>
      </td>
      <td>{nape === undefined ? "" : writtenLength(mm(nape - depthBelowNape.value), step, "bare")}</td>
      <td>
        <SheetBox isTicked={line.isMarked} />
      </td>
      <td>{shown(body.girth)}</td>
      <td>{shown(body.frontArc)}</td>
      {lineParts.map((part) => {
        const read = line.read[part];
        return (
          <td key={part} className="lines-room">
            {read === undefined ? "" : writtenLength(read, step, "bare")}
          </td>
        );
      })}
    </tr>
  );
}
