import type { RankedSize } from "../../core/plan/chooseForm";
import { requiredMeasurementNames } from "../../core/body/vocabulary";
import { tapeAgreement } from "../../core/tolerances";
import { formTables } from "../../document/formTables";
import { LengthFigure } from "../LengthFigure";
import { formingWords } from "../text/forming";
import { unitMarks } from "../text/workroom";
import { useDerived } from "../useDerived";
import { useDispatch, useFitting, useLengths } from "../useStore";

/** Which table the form follows, how its sizes suit this body, and which one is taken. */
export function FormSizes() {
  const { form } = useFitting();
  const { ranking } = useDerived();
  const dispatch = useDispatch();
  const isMeasured = requiredMeasurementNames.every((name) => form[name] !== undefined);
  const table = formTables.find(({ id }) => id === form.table);
  return (
    <section className="sizes stack">
      <h2>{formingWords.tableTitle}</h2>
      <p>{isMeasured ? formingWords.measuredWins : formingWords.tableLead}</p>
      <label className="choice">
        <span>{formingWords.table}</span>
        <select
          className="line-input"
          value={form.table ?? ""}
          onChange={(event) => dispatch({ does: "chooseForm", table: event.target.value || null, size: null })}
        >
          <option value="">{formingWords.noTable}</option>
          {formTables.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </label>
      {table === undefined ? null : ranking.length === 0 ? (
        <p className="quiet">{formingWords.needsBody}</p>
      ) : (
        <SizeChoice ranking={ranking} order={table.sizes.map(({ name }) => name)} table={table.id} />
      )}
      {table === undefined ? null : <p className="quiet small">{formingWords.source(table.source)}</p>}
    </section>
  );
}

interface SizeChoiceProps {
  readonly ranking: readonly RankedSize[];
  readonly order: readonly string[];
  readonly table: string;
}

/** The best size and the two next to it in the open, the rest behind a fold. */
function SizeChoice({ ranking, order, table }: SizeChoiceProps) {
  const { form } = useFitting();
  const { write } = useLengths();
  const best = ranking[0];
  if (best === undefined) return null;
  const at = order.indexOf(best.size);
  const inOrder = order.flatMap((name) => ranking.filter(({ size }) => size === name));
  const near = inOrder.filter((_, i) => Math.abs(i - at) <= 1);
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
