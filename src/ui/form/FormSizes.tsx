import { useState } from "react";
import type { RankedSize } from "../../core/plan/chooseForm";
import { requiredMeasurementNames } from "../../core/body/vocabulary";
import { type ChartKind, chartKinds, firstChart } from "../../core/form/formTable";
import { formTables } from "../../document/formTables";
import { formingWords } from "../text/forming";
import { useDerived } from "../useDerived";
import { useDispatch, useFitting, useLengths } from "../useStore";
import { SizeFacts, SizeHead } from "./SizeFacts";

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
          {chartKinds.map((kind) => (
            <ChartOptions key={kind} kind={kind} />
          ))}
        </select>
      </label>
      {table === undefined ? null : <p>{formingWords.source(table.source)}</p>}
      <BetterChart />
      {table === undefined ? null : ranking.length === 0 ? (
        <p className="quiet">{formingWords.needsBody}</p>
      ) : (
        <SizeChoice ranking={ranking} order={table.sizes.map(({ name }) => name)} table={table.id} />
      )}
    </section>
  );
}

/** The size charts of one standing, under its name; one that lacks a needed measurement says so. */
function ChartOptions({ kind }: { readonly kind: ChartKind }) {
  const charts = formTables.filter(({ source }) => source.kind === kind);
  if (charts.length === 0) return null;
  return (
    <optgroup label={formingWords.kinds[kind]}>
      {charts.map(({ id, title, sizes }) => (
        <option key={id} value={id}>
          {title}
          {sizes.every(({ measurements }) => measurements.fullHipGirth !== undefined) ? "" : ` (${formingWords.lacks})`}
        </option>
      ))}
    </optgroup>
  );
}

/** Said while no size is chosen and another chart of the best standing reaches as far as this body. */
function BetterChart() {
  const { form } = useFitting();
  const { lengths } = useDerived();
  const dispatch = useDispatch();
  const bust = lengths?.body.bustGirth;
  const better = bust === undefined ? undefined : firstChart(formTables, requiredMeasurementNames, bust);
  const chosen = formTables.find(({ id }) => id === form.table);
  if (better === undefined || chosen === undefined || form.size !== undefined || better.id === chosen.id) return null;
  if (firstChart([chosen, better], requiredMeasurementNames, bust) === chosen) return null;
  return (
    <p>
      {formingWords.reachesFurther(better.title)}{" "}
      <button
        type="button"
        className="patch"
        onClick={() => dispatch({ does: "chooseForm", table: better.id, size: null })}
      >
        {formingWords.take(better.title)}
      </button>
    </p>
  );
}

interface SizeChoiceProps {
  readonly ranking: readonly RankedSize[];
  readonly order: readonly string[];
  readonly table: string;
}

/**
 * The best size, the two next to it and the one that was chosen before in the open, the rest behind a fold. A size chosen
 * in the fold stays where the finger found it.
 */
function SizeChoice({ ranking, order, table }: SizeChoiceProps) {
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
