import {
  type LengthRow,
  lengthRows,
  type LineColumn,
  lineCell,
  lineColumns,
  type Whose,
} from "../../../app/print/shortMeasuring";
import { levelNames } from "../../../core/body/vocabulary";
import { shortCautions } from "../../../text/cautions";
import { measurementTexts } from "../../../text/measurements";
import { levelWords } from "../../../text/pictures";
import { measuringSheetWords } from "../../../text/printing";
import { shortMeasuringWords } from "../../../text/roster";
import { HeadCells } from "../HeadCells";
import { SheetPage } from "./SheetPage";

const whose = ["body", "form"] as const satisfies readonly Whose[];

/** The blank measuring sheet on one page, for one person: the level lines as a table, then every other measurement, with room to write. */
export function ShortMeasureSheet({ name }: { readonly name: string }) {
  const { title, sides } = shortMeasuringWords;
  const { how } = measuringSheetWords;
  const third = Math.ceil(lengthRows.length / 3);
  return (
    <section className="sheets" aria-label={title}>
      <SheetPage title={title} isFirst isLast>
        <div className="sheet-short">
          <Blanks name={name} />
          <p>
            <strong>{shortCautions("measuringBody")}</strong> {how} {sides}
          </p>
          <Lines />
          <div className="sheet-short-columns">
            {[0, third, 2 * third]
              .map((from) => lengthRows.slice(from, from + third))
              .map((rows) => (
                <Lengths key={rows[0]?.name} rows={rows} />
              ))}
          </div>
        </div>
      </SheetPage>
    </section>
  );
}

function Blanks({ name }: { readonly name: string }) {
  const [forWhom, ...others] = measuringSheetWords.blanks;
  return (
    <div className="sheet-blanks">
      <p className="sheet-blank">
        <span>
          {forWhom} {name}
        </span>
      </p>
      {others.map((words) => (
        <p key={words} className="sheet-blank">
          <span>{words}</span>
        </p>
      ))}
    </div>
  );
}

function Lines() {
  const { heads, whose: names } = shortMeasuringWords;
  return (
    <table className="sheet-table">
      <thead>
        <tr>
          <HeadCells words={[heads.level, "", ...lineColumns.map((column: LineColumn) => heads[column])]} />
        </tr>
      </thead>
      <tbody>
        {levelNames.flatMap((level) =>
          whose.map((one) => (
            <tr key={`${level} ${one}`}>
              {one === "body" ? (
                <th scope="rowgroup" rowSpan={2}>
                  {levelWords[level]}
                </th>
              ) : null}
              <th scope="row">{names[one]}</th>
              {lineColumns.map((column) => (
                <td key={column} data-measurement={lineCell(level, column, one)} data-whose={one} />
              ))}
            </tr>
          )),
        )}
      </tbody>
    </table>
  );
}

function Lengths({ rows }: { readonly rows: readonly LengthRow[] }) {
  const { lengths, whose: names } = shortMeasuringWords;
  return (
    <table className="sheet-table">
      <thead>
        <tr>
          <HeadCells words={[lengths, ...whose.map((one) => names[one])]} />
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.name}>
            <th scope="row">{measurementTexts[row.name].label}</th>
            {whose.map((one) =>
              row.whose.includes(one) ? (
                <td key={one} data-measurement={row.name} data-whose={one} />
              ) : (
                <td key={one} className="sheet-void" />
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
