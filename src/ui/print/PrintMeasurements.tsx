import type { Reading } from "../../core/body/reading";
import type { Plan } from "../../core/plan/plan";
import { levelWords } from "../text/pictures";
import { printingWords } from "../text/printing";
import { useLengths } from "../useStore";

/** What the tape says of the body and of the form at each level; guesses are marked as such. */
export function PrintMeasurements({ plan }: { readonly plan: Plan }) {
  const { write } = useLengths();
  const { measureHead } = printingWords;
  const shown = (reading: Reading): string => `${reading.kind === "estimated" ? "≈ " : ""}${write(reading.value)}`;
  const parts = [measureHead.girth, measureHead.front, measureHead.back];
  return (
    <table className="sheet-table">
      <thead>
        <tr>
          <th scope="col" rowSpan={2}>
            {measureHead.level}
          </th>
          <th scope="col" rowSpan={2}>
            {measureHead.down}
          </th>
          <th scope="colgroup" colSpan={3}>
            {measureHead.body}
          </th>
          <th scope="colgroup" colSpan={3}>
            {measureHead.form}
          </th>
        </tr>
        <tr>
          {[measureHead.body, measureHead.form].flatMap((whose) =>
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
            <td>{shown(body.girth)}</td>
            <td>{shown(body.frontArc)}</td>
            <td>{shown(body.backArc)}</td>
            <td>{shown(form.girth)}</td>
            <td>{shown(form.frontArc)}</td>
            <td>{shown(form.backArc)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
