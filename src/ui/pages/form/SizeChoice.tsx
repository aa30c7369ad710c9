import { useState } from "react";
import { requiredMeasurementNames } from "../../../core/body/vocabulary";
import type { RankedSize } from "../../../core/plan/chooseForm";
import { tapeAgreement } from "../../../core/tolerances";
import { formingWords } from "../../../text/forming";
import { unitMarks } from "../../../text/workroom";
import { LengthFigure } from "../../kit/LengthFigure";
import { useDispatch, useFitting, useLengths } from "../../kit/useStore";

/**
 * The best size, the two next to it and the one that was chosen before in the open, the rest behind a fold. A size chosen
 * in the fold stays where the finger found it.
 */
interface SizeChoiceProps {
  readonly ranking: readonly RankedSize[];
  readonly order: readonly string[];
  readonly table: string;
}

export function SizeChoice({ ranking, order, table }: SizeChoiceProps) {
  const { form } = useFitting();
  const { write } = useLengths();
  const [chosenBefore] = useState(form.size);
  const best = ranking[0];
  if (best === undefined) return null;
  const at = order.indexOf(best.size);
  const inOrder = order.flatMap((name) => ranking.filter(({ size }) => size === name));
  const near = inOrder.filter(({ size }, i) => Math.abs(i - at) <= 1 || size === String(chosenBefore));
  const isFarChosen = form.size !== undefined && !near.some(({ size }) => size === String(form.size));
  return (
    <>
      <p>
        <strong>
          {best.shortfallTotal > 0
            ? formingWords.noneFits(best.size, write(best.shortfallTotal))
            : formingWords.why(best.size, write(best.waistGain), best.waistLayers)}
        </strong>
      </p>
      <SizeList sizes={near} best={best} table={table} withTool />
      <details className="wide" open={isFarChosen}>
        <summary className="fold">{formingWords.allSizes}</summary>
        <SizeList sizes={inOrder.filter((size) => !near.includes(size))} best={best} table={table} />
      </details>
    </>
  );
}

interface SizeListProps {
  readonly sizes: readonly RankedSize[];
  readonly best: RankedSize;
  readonly table: string;
  readonly withTool?: boolean;
}

function SizeList({ sizes, best, table, withTool = false }: SizeListProps) {
  const { form } = useFitting();
  const dispatch = useDispatch();
  return (
    <ul className="size-list wide">
      <SizeHead />
      {withTool ? (
        <li>
          <label className="size">
            <input
              type="radio"
              name="size"
              checked={form.size === undefined}
              onChange={() => dispatch({ does: "chooseForm", table, size: null })}
            />
            <span className="size-name">{formingWords.toolChooses(best.size)}</span>
          </label>
        </li>
      ) : null}
      {sizes.map((ranked) => (
        <li key={ranked.size}>
          <label className="size">
            <input
              type="radio"
              name="size"
              checked={String(form.size) === ranked.size}
              onChange={() => dispatch({ does: "chooseForm", table, size: ranked.size })}
            />
            <span className="size-name">
              {formingWords.size} {ranked.size}
            </span>
            <SizeFacts ranked={ranked} />
          </label>
        </li>
      ))}
    </ul>
  );
}

const { bust, waist, fullHip } = formingWords.sizeHead;
const girthHeads = { bustGirth: bust, waistGirth: waist, fullHipGirth: fullHip } as const;

/** What the columns are; beside each figure a screen reader hears it again. */
function SizeHead() {
  const { unit } = useLengths();
  const { size, verdict } = formingWords.sizeHead;
  return (
    <li className="size size-head" aria-hidden>
      <span />
      <span>
        {size}, {unitMarks[unit]}
      </span>
      <span className="size-facts">
        <span className="size-girths">
          {requiredMeasurementNames.map((name) => (
            <span key={name}>{girthHeads[name]}</span>
          ))}
        </span>
        <span>{verdict}</span>
      </span>
    </li>
  );
}

/** The size’s own girths, and how it suits this body. */
function SizeFacts({ ranked }: { readonly ranked: RankedSize }) {
  const { step, write } = useLengths();
  return (
    <span className="size-facts">
      <span className="size-girths">
        {requiredMeasurementNames.map((name) => {
          const girth = ranked.measurements[name];
          return girth === undefined ? null : (
            <span key={name}>
              <span className="unseen">{girthHeads[name]} </span>
              <LengthFigure length={girth} step={step} unitShown={false} />
            </span>
          );
        })}
      </span>
      <span>
        {ranked.shortfallTotal > 0 ? formingWords.over(write(ranked.shortfallTotal)) : formingWords.nothingOver};{" "}
        {ranked.waistGain <= tapeAgreement ? formingWords.noLayers : formingWords.waistLayers(ranked.waistLayers)}
      </span>
    </span>
  );
}
