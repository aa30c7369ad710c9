import { useMemo } from "react";
import { stepKeys } from "../../../app/steps/stepKeys";
import { stepNoteWords } from "../../../text/stepNotes";
import { paperJob, type SessionRow, sessionRows } from "../../../app/classView/sessionPlan";
import { sessionPages, sessionRowHeight } from "../../../app/print/sessionPages";
import type { Step } from "../../../app/steps/step";
import { stepFacts } from "../../../app/steps/stepFacts";
import type { Plan } from "../../../core/plan/plan";
import { durationText, sessionActs } from "../../../text/classView";
import { sessionRowText, sessionSheetWords } from "../../../text/sessionSheet";
import { stepWords } from "../../../text/steps";
import { HeadCells } from "../HeadCells";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";
import { SheetBox, SheetPage, usePrintedName } from "./SheetPage";

/** A row with how many minutes have passed after it, from the first one that is not done, and the notes to its steps. */
interface PrintedRow extends Pick<SessionRow, "isDone" | "mayStop"> {
  readonly text: string;
  readonly notes: readonly string[];
  /** Null where only notes are left of a step that the plan has no longer. */
  readonly minutes: { readonly own: number; readonly soFar: number } | null;
}

/** The session plan for the hand: every step with its minutes, where to stop, boxes to tick, and room for how long it took. */
export function SessionSheet({ plan }: { readonly plan: Plan }) {
  const { title: titled } = sessionSheetWords;
  const title = titled(usePrintedName());
  const rows = usePrintedRows(plan);
  const pages = sessionPages(rows, heightOf);
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

function usePrintedRows(plan: Plan): readonly PrintedRow[] {
  const derived = useDerived();
  const fitting = useFitting();
  const { step: lengths } = useLengths();
  return useMemo(() => {
    const facts = stepFacts(plan, derived.lengths?.body ?? {}, fitting);
    const say = (step: Step): string =>
      stepWords(step, { lengths, levels: plan.levels, pieces: plan.pieces, facts })[0];
    const { stepNotes = {} } = fitting;
    const job = paperJob(plan, derived, fitting);
    const keys = stepKeys(job.steps.map(({ step }) => step));
    const known = new Set(keys);
    let [soFar, at] = [0, 0];
    const rows = sessionRows(job).map(({ steps, minutes, isDone, mayStop }): PrintedRow => {
      if (!isDone) soFar += minutes;
      const notes = steps.flatMap((step, i) => {
        const note = stepNotes[keys[at + i] ?? ""];
        if (note === undefined) return [];
        return [steps.length === 1 ? note : stepNoteWords.onPaper(sessionActs[step.do] ?? say(step), note)];
      });
      at += steps.length;
      return { text: sessionRowText(steps, say, true), notes, minutes: { own: minutes, soFar }, isDone, mayStop };
    });
    const gone = Object.entries(stepNotes).flatMap(([key, note]) => (known.has(key) ? [] : [note]));
    if (gone.length === 0) return rows;
    return [...rows, { text: stepNoteWords.gone, notes: gone, minutes: null, isDone: false, mayStop: false }];
  }, [plan, derived, fitting, lengths]);
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
  const { heads, stop, already } = sessionSheetWords;
  return (
    <table className="sheet-table session-rows">
      <thead>
        <tr>
          <HeadCells words={[heads.done, heads.step, heads.sum, heads.soFar, heads.took]} />
        </tr>
      </thead>
      <tbody>
        {rows.map(({ text, notes, minutes, isDone, mayStop }, i) => (
          // A job may come to the same step twice.
          <tr key={`${text}${String(i)}`} className={mayStop ? "session-stop" : undefined}>
            <td>{minutes === null ? null : <SheetBox isTicked={isDone} />}</td>
            <td>
              {text}
              {mayStop && !isDone ? <strong> {stop}</strong> : null}
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

/** Two lines fit into the least height; what is longer takes more. */
const heightOf = ({ text, notes }: PrintedRow): number => {
  const lines = [text, ...notes.flatMap((note) => note.split("\n"))].map(({ length }) =>
    Math.max(1, Math.ceil(length / lettersOfLine)),
  );
  return Math.max(sessionRowHeight, lines.reduce((sum, count) => sum + count, 0) * lineHeight + 1);
};

/** Of the column of the steps, where it is narrowest; and a line of ten points (mm). */
const lettersOfLine = 48;
const lineHeight = 4.1;
