import { sessionPages } from "../../../app/print/sessionPages";
import type { Plan } from "../../../core/plan/plan";
import { durationText } from "../../../text/classView";
import { sessionSheetWords } from "../../../text/sessionSheet";
import { HeadCells } from "../HeadCells";
import { SheetBox, SheetPage, usePrintedName } from "./SheetPage";
import { printedRowHeight, type PrintedRow, usePrintedRows } from "./usePrintedRows";

/** The session plan for the hand: every step with its minutes, where to stop, boxes to tick, and room for how long it took. */
export function SessionSheet({ plan }: { readonly plan: Plan }) {
  const { title: titled } = sessionSheetWords;
  const title = titled(usePrintedName());
  const rows = usePrintedRows(plan);
  const pages = sessionPages(rows, printedRowHeight);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets session-sheet" tabIndex={0} aria-label={title}>
      {pages.map(({ rows, days }, i) => (
        <SheetPage key={rows[0]?.text ?? "none"} title={title} isFirst={i === 0} isLast={i === pages.length - 1}>
          <div className="sheet-session">
            {i === 0 ? <Head /> : null}
            <Rows rows={rows} />
            {days === 0 ? null : <Days count={days} />}
          </div>
        </SheetPage>
      ))}
    </section>
  );
}

function Head() {
  const { blanks, how } = sessionSheetWords;
  return (
    <>
      <div className="sheet-blanks">
        {blanks.map((words) => (
          <p key={words} className="sheet-blank">
            <span>{words}</span>
          </p>
        ))}
      </div>
      <p>{how}</p>
    </>
  );
}

function Rows({ rows }: { readonly rows: readonly PrintedRow[] }) {
  const { heads, stop, already, dayEnds } = sessionSheetWords;
  return (
    <table className="sheet-table session-rows">
      <thead>
        <tr>
          <HeadCells words={[heads.done, heads.step, heads.sum, heads.soFar, heads.took]} />
        </tr>
      </thead>
      <tbody>
        {rows.map(({ places, text, notes, minutes, isDone, mayStop, endsDay }, i) => (
          // A job may come to the same step twice.
          <tr key={`${text}${String(i)}`} className={mayStop ? "session-stop" : undefined}>
            <td>
              {minutes === null ? null : <SheetBox isTicked={isDone} />} {places}
            </td>
            <td>
              {text}
              {mayStop && !isDone ? <strong> {stop}</strong> : null}
              {endsDay === null ? null : <strong> {dayEnds(endsDay)}</strong>}
              {notes.map((note) => (
                <p key={note} className="session-note">
                  {note}
                </p>
              ))}
            </td>
            <td>{minutes === null ? "" : durationText(minutes.own)}</td>
            <td>{minutes === null ? "" : isDone ? already : durationText(minutes.soFar)}</td>
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Days({ count }: { readonly count: number }) {
  const { days, dayHeads } = sessionSheetWords;
  return (
    <table className="sheet-table session-days">
      <caption>{days}</caption>
      <thead>
        <tr>
          <HeadCells words={[...dayHeads]} />
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: count }, (_, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: empty rows have nothing else to be told apart by.
          <tr key={i}>
            {dayHeads.map((head) => (
              <td key={head} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
