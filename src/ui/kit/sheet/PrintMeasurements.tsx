import { tapeParts } from "../../../app/progress/padProgress";
import type { Reading } from "../../../core/body/reading";
import { formatLength } from "../../../core/lengthText";
import type { Plan } from "../../../core/plan/plan";
import { levelWords } from "../../../text/pictures";
import { printingWords } from "../../../text/printing";
import { unitNames } from "../../../text/workroom";
import { useLengths } from "../useStore";

/** What the tape says of the body and of the bare form at each level, guesses marked as such. */
export function PrintMeasurements({ plan }: { readonly plan: Plan }) {
  const { unit, step } = useLengths();
  const { measureHead } = printingWords;
  const bare = (value: Reading["value"]): string => formatLength(value, step, "bare");
  const shown = ({ kind, value }: Reading): string => `${kind === "estimated" ? "≈ " : ""}${bare(value)}`;
  const parts = { body: tapeParts, form: ["girth", "frontArc"] } as const;
  return (
    <div>
      <table className="sheet-table sheet-measures">
        <thead>
          <tr>
            <th scope="col" rowSpan={2}>
              {measureHead.level}, {unitNames[unit]}
            </th>
            {(["body", "form"] as const).map((whose) => (
              <th key={whose} scope="colgroup" colSpan={parts[whose].length}>
                {measureHead[whose]}
              </th>
            ))}
          </tr>
          <tr>
            {(["body", "form"] as const).flatMap((whose) =>
              parts[whose].map((part) => (
                <th key={`${whose}${part}`} scope="col">
                  {measureHead.parts[part]}
                </th>
              )),
            )}
          </tr>
        </thead>
        <tbody>
          {plan.levels.map(({ name, body, form }) => (
            <tr key={name}>
              <th scope="row">{levelWords[name]}</th>
              {parts.body.map((part) => (
                <td key={`body${part}`}>{shown(body[part])}</td>
              ))}
              {parts.form.map((part) => (
                <td key={`form${part}`}>{shown(form[part])}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p>{printingWords.guessNote}</p>
    </div>
  );
}
