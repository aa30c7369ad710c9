import { useMemo } from "react";
import { layerShares } from "../../../app/print/layersByThickness";
import { openTrial } from "../../../app/print/openTrial";
import { tuningColumns } from "../../../app/print/tuningColumns";
import { tuningNeighbors } from "../../../app/print/tuningNeighbors";
import { tuningWidths } from "../../../app/print/tuningWidths";
import { fineStep } from "../../../core/lengthText";
import { leastHalfWidth } from "../../../core/padding/sideLevel";
import type { PlanInput } from "../../../core/plan/basis";
import type { Plan, PlannedPiece } from "../../../core/plan/plan";
import { onTarget } from "../../../core/tolerances";
import { mm } from "../../../core/units";
import { thePiece } from "../../../text/pieces";
import { levelWords } from "../../../text/pictures";
import { printingWords, trialColumnNames } from "../../../text/printing";
import { writtenLength } from "../../../text/writtenLength";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";

interface TuningProps {
  readonly plan: Plan;
  readonly piece: PlannedPiece;
}

/** How wide to cut a tuning layer at each line by what is short there, so that the work goes on with nothing but paper. */
export function TuningTable({ plan, piece }: TuningProps) {
  const { input } = useDerived();
  return input === null ? null : <WidthTable plan={plan} piece={piece} input={input} />;
}

function WidthTable({ plan, piece, input }: TuningProps & { readonly input: PlanInput }) {
  const { unit, step } = useLengths();
  const isOpen = openTrial(plan, useFitting().work);
  const shortages = useMemo(() => tuningColumns(piece, unit, isOpen), [piece, unit, isOpen]);
  const rows = useMemo(() => tuningWidths(input, plan, piece, shortages, step), [input, plan, piece, shortages, step]);
  const { tuning, tuningShort, tuningNone, tuningBeyond } = printingWords;
  return (
    <div className="sheet-tuning">
      <p>{tuning(piece.anchor === "centerBack" ? "back" : "front", isOpen)}</p>
      <table className="sheet-table">
        <thead>
          {(isOpen ? layerShares : [null]).map((share, row) => (
            <tr key={share ?? 1}>
              <th scope="row">
                {share === null ? tuningShort : printingWords.tuningColumn(trialColumnNames[row] ?? "")}
              </th>
              {shortages.map((short) => (
                <th key={short} scope="col">
                  {writtenLength(mm(short * (share ?? 1)), fineStep[unit], "bare")}
                </th>
              ))}
            </tr>
          ))}
        </thead>
        <tbody>
          {rows.map(({ level, widths }) => (
            <tr key={level}>
              <th scope="row">{levelWords[level]}</th>
              {widths.map((width, i) => (
                <td key={shortages[i]}>
                  {width === "none"
                    ? tuningNone
                    : width === "beyond"
                      ? tuningBeyond
                      : writtenLength(width, step, "bare")}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Under whose outermost layer it is slipped in. */
export function TuningPlace({ plan, piece }: TuningProps) {
  const { wrap, panels } = tuningNeighbors(plan, piece);
  return <p>{printingWords.tuningLies(wrap === null ? null : thePiece(wrap), panels.map(thePiece))}</p>;
}

/** What the signs in these tables mean, once. */
export function TuningLegend() {
  const { write } = useLengths();
  return <p>{printingWords.tuningLegend(write(mm(2 * leastHalfWidth)), write(onTarget))}</p>;
}
