import { useMemo } from "react";
import { layersByThickness } from "../../../app/print/layersByThickness";
import { trialTurns } from "../../../app/steps/stepRecord";
import { writtenLength } from "../../../text/writtenLength";
import { isStructure } from "../../../core/padding/piece";
import type { PlanInput } from "../../../core/plan/basis";
import type { Plan } from "../../../core/plan/plan";
import { mm, type Millimetres } from "../../../core/units";
import { numberedName } from "../../../text/pieces";
import { printingWords } from "../../../text/printing";
import { HeadCells } from "../HeadCells";
import { useLengths } from "../useStore";

/** Rows of the table besides the pieces. */
export const trialRows = 3;

/** How many layers each piece gets by what the trial's strip gained, so that paper alone goes on from there. */
export function TrialTable({ plan, input }: { readonly plan: Plan; readonly input: PlanInput }) {
  const { step } = useLengths();
  const columns = useMemo(() => layersByThickness(input, plan, trialTurns), [input, plan]);
  const structure = plan.pieces.filter(isStructure);
  const bare = (length: Millimetres | null) => (length === null ? null : writtenLength(length, step, "bare"));
  const { how, gained, between, half, times } = printingWords.trial;
  if (structure.length === 0) return null;
  const rows = [
    ...structure.map((piece, i) => [numberedName(piece), ...columns.map(({ layers }) => String(layers[i] ?? 0))]),
    [half, ...columns.map(({ layer }) => bare(mm(Math.PI * layer)) ?? "")],
    [times, ...columns.map(({ share }) => String(Math.round(10 / share) / 10))],
  ];
  return (
    <>
      <p>{how}</p>
      <table className="sheet-table sheet-trial">
        <thead>
          <tr>
            <HeadCells words={[gained, ...columns.map(({ gain }) => between(bare(gain.from), bare(gain.to)))]} />
          </tr>
        </thead>
        <tbody>
          {rows.map(([head, ...cells]) => (
            <tr key={head}>
              <th scope="row">{head}</th>
              {cells.map((cell, i) => (
                <td key={columns[i]?.share}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
