import { isConfirmed, type NowReading, type PadProgress, tapeParts } from "../../app/padProgress";
import type { Reading } from "../../core/body/reading";
import { formatLength } from "../../core/lengthText";
import type { Plan } from "../../core/plan/plan";
import { levelWords } from "../text/pictures";
import { printingWords } from "../text/printing";
import { unitNames } from "../text/workroom";
import { useLengths } from "../useStore";

/**
 * What the tape says of the body and of the bare form at each level, guesses marked as such, and what it read over the
 * padding: filled in where it was read since the last piece, and else room to write.
 */
export function PrintMeasurements({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const { unit, step } = useLengths();
  const { measureHead } = printingWords;
  const bare = (value: Reading["value"]): string => formatLength(value, step, "bare");
  const shown = ({ kind, value }: Reading): string => `${kind === "estimated" ? "≈ " : ""}${bare(value)}`;
  const read = (now: NowReading): string => (isConfirmed(now) ? bare(now.value) : "");
  const parts = [measureHead.girth, measureHead.front, measureHead.back];
  return (
    <table className="sheet-table sheet-measures">
      <thead>
        <tr>
          <th scope="col" rowSpan={2}>
            {measureHead.level}, {unitNames[unit]}
          </th>
          <th scope="col" rowSpan={2}>
            {measureHead.down}
          </th>
          {[measureHead.body, measureHead.form, measureHead.padded].map((whose) => (
            <th key={whose} scope="colgroup" colSpan={3}>
              {whose}
            </th>
          ))}
        </tr>
        <tr>
          {[measureHead.body, measureHead.form, measureHead.padded].flatMap((whose) =>
            parts.map((part) => (
              <th key={`${whose}${part}`} scope="col">
                {part}
              </th>
            )),
          )}
        </tr>
      </thead>
      <tbody>
        {plan.levels.map(({ name, drop, body, form }) => (
          <tr key={name}>
            <th scope="row">{levelWords[name]}</th>
            <td>{shown(drop)}</td>
            {tapeParts.map((part) => (
              <td key={`body${part}`}>{shown(body[part])}</td>
            ))}
            {tapeParts.map((part) => (
              <td key={`form${part}`}>{shown(form[part])}</td>
            ))}
            {tapeParts.map((part) => (
              <td key={`read${part}`}>{read(progress.now[name][part])}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
