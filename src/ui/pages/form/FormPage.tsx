import { requiredMeasurementNames } from "../../../core/body/vocabulary";
import { type ChartKind, chartKinds, firstChart } from "../../../core/form/formTable";
import { formTables } from "../../../document/formTables";
import { formingWords } from "../../../text/forming";
import { measuringWords } from "../../../text/measuring";
import { formKindWords } from "../../../text/formKinds";
import { Cautions } from "../../kit/Cautions";
import { FormKindChoice } from "./FormKindChoice";
import { MeasureChart } from "../../kit/measure/MeasureChart";
import { firstContradiction, FirstProblem } from "../../kit/measure/MeasureProblems";
import { pageAddress } from "../../kit/page";
import { DraftNote } from "../../kit/plan/PlanWaiting";
import { useDerived } from "../../kit/useDerived";
import { useDispatch, useFitting } from "../../kit/useStore";
import { SizeChoice } from "./SizeChoice";

/** The form: the size it is sold as, and what a tape says about it, which always wins. */
export function FormPage() {
  const { planning, problems } = useDerived();
  const wrong = firstContradiction(problems.measurements, "form");
  return (
    <>
      <div className="place-head">
        <h1>{formingWords.title}</h1>
        <p className="lead">{formingWords.lead}</p>
      </div>
      <section className="stack">
        <p>{formKindWords.lead}</p>
        <FormKindChoice />
      </section>
      <FormSizes />
      <section className="stitched">
        <h2>{measuringWords.formTitle}</h2>
        <p>{measuringWords.formLead}</p>
        {planning.kind === "planned" ? <DraftNote plan={planning.plan} /> : null}
        <Cautions at="handlingForm" />
        {wrong === undefined ? null : <FirstProblem problem={wrong} />}
        <MeasureChart
          whose="form"
          enough={
            planning.kind === "planned" ? (
              <li className="enough">
                <a className="patch" href={pageAddress("plan")}>
                  {measuringWords.toPlan}
                </a>
              </li>
            ) : null
          }
        />
      </section>
    </>
  );
}

/** Which table the form follows, how its sizes suit this body, and which one is taken. */
function FormSizes() {
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
