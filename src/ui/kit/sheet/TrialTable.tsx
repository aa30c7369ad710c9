import { useMemo } from "react";
import { layersByThickness } from "../../../app/print/layersByThickness";
import { openTrial } from "../../../app/print/openTrial";
import { writtenLength } from "../../../text/writtenLength";
import { isStructure } from "../../../core/padding/piece";
import type { PlanInput } from "../../../core/plan/basis";
import type { Plan } from "../../../core/plan/plan";
import type { Millimetres } from "../../../core/units";
import { numberedName } from "../../../text/pieces";
import { printingWords, trialColumnNames } from "../../../text/printing";
import { HeadCells } from "../HeadCells";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";

/** How many layers each piece gets by what the trial's strip gained, so that paper alone goes on from there; once a trial is noted the plan goes by it. */
export function TrialTable({ plan }: { readonly plan: Plan }) {
  const { input } = useDerived();
  const { work } = useFitting();
  return input === null || !openTrial(plan, work) ? null : <OpenTrialTable plan={plan} input={input} />;
}

function OpenTrialTable({ plan, input }: { readonly plan: Plan; readonly input: PlanInput }) {
  const { step } = useLengths();
  const columns = useMemo(() => layersByThickness(input, plan), [input, plan]);
  const structure = plan.pieces.filter(isStructure);
  const bare = (length: Millimetres) => writtenLength(length, step, "bare");
  const { how, gained, between, beyond, wrap } = printingWords.trial;
  const [first, last] = [columns[0], columns.at(-1)];
  if (first === undefined || last === undefined) return null;
  return (
    <div className="sheet-keep">
      <p>{how}</p>
      <table className="sheet-table sheet-trial">
        <thead>
          <tr>
            <td />
            <HeadCells words={trialColumnNames} />
          </tr>
          <tr>
            <HeadCells words={[gained, ...columns.map(({ gain }) => between(bare(gain.from), bare(gain.to)))]} />
          </tr>
        </thead>
        <tbody>
          {structure.map((piece, i) => (
            <tr key={piece.id}>
              <th scope="row">{numberedName(piece)}</th>
              {columns.map(({ layers, share }) => (
                <td key={share}>{layers[i] ?? 0}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p>{beyond(writtenLength(first.gain.from, step), writtenLength(last.gain.to, step))}</p>
      {structure.some(({ kind }) => kind === "wrap") ? <p>{wrap}</p> : null}
    </div>
  );
}
