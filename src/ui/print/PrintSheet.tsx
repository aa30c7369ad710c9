import type { Reading } from "../../core/body/reading";
import { formatLength, fineStep } from "../../core/lengthText";
import type { Plan } from "../../core/plan/plan";
import { entryLength } from "../../document/fitting";
import { formatArea } from "../area";
import { battingWords } from "../text/batting";
import { levelWords } from "../text/pictures";
import { planWords } from "../text/plan";
import { printingWords } from "../text/printing";
import { useFitting, useLengths } from "../useStore";
import { PrintPieces } from "./PrintPieces";
import { printPages } from "./printPages";

/** The padding sheet: measurements, pieces with cut sizes and places, what the tape should read, boxes to tick and fill. */
export function PrintSheet({ plan }: { readonly plan: Plan }) {
  const { title } = useFitting();
  const pages = printPages(plan);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets" tabIndex={0} aria-label={printingWords.sheetTitle(title)}>
      {pages.map(({ pieces, isLast }, i) => (
        <article key={pieces[0]?.id ?? "first"} className="sheet">
          <SheetHead plan={plan} isContinued={i > 0} />
          {i === 0 ? <Measurements plan={plan} /> : null}
          {plan.pieces.length === 0 ? (
            <p>{printingWords.none}</p>
          ) : (
            <PrintPieces plan={plan} pieces={pieces} isContinued={i > 0} />
          )}
          {isLast ? <SheetFoot plan={plan} /> : <p className="sheet-overleaf">{printingWords.overleaf}</p>}
        </article>
      ))}
    </section>
  );
}

function SheetHead({ plan, isContinued }: { readonly plan: Plan; readonly isContinued: boolean }) {
  const { title, batting, unit } = useFitting();
  const layer = entryLength(batting.layerThickness, unit);
  const layerText = layer.ok ? formatLength(layer.value, unit === "in" ? fineStep.in : "1 mm") : "";
  return (
    <header className="sheet-head">
      <h2 className="sheet-title">
        {printingWords.sheetTitle(title)}
        {isContinued ? `, ${printingWords.continued}` : ""}
      </h2>
      <p>
        {printingWords.batting(battingWords.layerShort(batting.name, layerText))}{" "}
        {printingWords.area(formatArea(plan.battingArea, unit))}
      </p>
    </header>
  );
}

function Measurements({ plan }: { readonly plan: Plan }) {
  const { write } = useLengths();
  const { measureHead } = printingWords;
  const shown = (reading: Reading): string => `${reading.kind === "estimated" ? "≈ " : ""}${write(reading.value)}`;
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
            [measureHead.girth, measureHead.front, measureHead.back].map((part) => (
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
            {[body.girth, body.frontArc, body.backArc, form.girth, form.frontArc, form.backArc].map((reading, i) => (
              // Six columns that never change places.
              <td key={`${name}${String(i)}`}>{shown(reading)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function SheetFoot({ plan }: { readonly plan: Plan }) {
  const { step } = useLengths();
  const words = planWords(step);
  const limits = [
    ...plan.shortfalls.map((shortfall) => words.shortfallAdvice(shortfall)),
    ...plan.seamShifts.map((shift) => words.seamShift(shift)),
  ];
  return (
    <footer className="sheet-foot">
      {limits.length === 0 ? null : (
        <>
          <h3>{printingWords.limits}</h3>
          <ul className="plain-list">
            {limits.map((limit) => (
              <li key={limit}>{limit}</li>
            ))}
          </ul>
        </>
      )}
      <p>
        {printingWords.after} {printingWords.care} {printingWords.guessNote}
      </p>
    </footer>
  );
}
