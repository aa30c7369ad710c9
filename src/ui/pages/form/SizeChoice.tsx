import { useState } from "react";
import type { RankedSize } from "../../../core/plan/chooseForm";
import { formingWords } from "../../../text/forming";
import { useDispatch, useFitting, useLengths } from "../../kit/useStore";
import { SizeFacts, SizeHead } from "./SizeFacts";

/**
 * The best size, the two next to it and the one that was chosen before in the open, the rest behind a fold. A size chosen
 * in the fold stays where the finger found it.
 */
export interface SizeChoiceProps {
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
