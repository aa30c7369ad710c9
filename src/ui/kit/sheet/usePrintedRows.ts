import { useContext, useMemo } from "react";
import { stepKeys } from "../../../app/steps/stepKeys";
import { stepNoteWords } from "../../../text/stepNotes";
import { paperJob, type SessionRow, sessionRows } from "../../../app/classView/sessionPlan";
import { sessionRowHeight } from "../../../app/print/sessionPages";
import type { Step } from "../../../app/steps/step";
import { stepFacts } from "../../../app/steps/stepFacts";
import type { Plan } from "../../../core/plan/plan";
import { sessionActs } from "../../../text/classView";
import { sessionRowText } from "../../../text/sessionSheet";
import { stepWords } from "../../../text/steps";
import { NamePrinted } from "./SheetPage";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";

/** A row with how many minutes have passed after it, from the first one that is not done, and the notes to its steps. */
export interface PrintedRow extends Pick<SessionRow, "isDone" | "mayStop" | "endsDay"> {
  /** The numbers that its steps have in the class view. */
  readonly places: string;
  readonly text: string;
  readonly notes: readonly string[];
  /** Null where only notes are left of a step that the plan has no longer. */
  readonly minutes: { readonly own: number; readonly soFar: number } | null;
}

/** The rows of the session plan on paper. */
export function usePrintedRows(plan: Plan): readonly PrintedRow[] {
  const derived = useDerived();
  const fitting = useFitting();
  const { step: lengths } = useLengths();
  const isNamed = useContext(NamePrinted);
  return useMemo(() => {
    const facts = stepFacts(plan, derived.lengths?.body ?? {}, fitting);
    const say = (step: Step): string =>
      stepWords(step, { lengths, levels: plan.levels, pieces: plan.pieces, facts })[0];
    // Without the name nobody should be found by what was said of them.
    const stepNotes = isNamed ? (fitting.stepNotes ?? {}) : {};
    const job = paperJob(plan, derived, fitting);
    const keys = stepKeys(job.steps.map(({ step }) => step));
    const known = new Set(keys);
    let [soFar, at] = [0, 0];
    const rows = sessionRows(job).map(({ steps, minutes, from, to, ...row }): PrintedRow => {
      if (!row.isDone) soFar += minutes;
      const notes = steps.flatMap((step, i) => {
        const note = stepNotes[keys[at + i] ?? ""];
        if (note === undefined) return [];
        return [steps.length === 1 ? note : stepNoteWords.onPaper(sessionActs[step.do] ?? say(step), note)];
      });
      at += steps.length;
      const places = from === to ? String(from) : `${from}–${to}`;
      return { ...row, places, text: sessionRowText(steps, say, true), notes, minutes: { own: minutes, soFar } };
    });
    const gone = Object.entries(stepNotes).flatMap(([key, note]) => (known.has(key) ? [] : [note]));
    if (gone.length === 0) return rows;
    const lost = { places: "", text: stepNoteWords.gone, notes: gone, minutes: null, isDone: false };
    return [...rows, { ...lost, mayStop: false, endsDay: null }];
  }, [plan, derived, fitting, lengths, isNamed]);
}

/** Two lines fit into the least height; what is longer takes more. */
export const printedRowHeight = ({ text, notes }: PrintedRow): number => {
  const lines = [text, ...notes.flatMap((note) => note.split("\n"))].map(({ length }) =>
    Math.max(1, Math.ceil(length / lettersOfLine)),
  );
  return Math.max(sessionRowHeight, lines.reduce((sum, count) => sum + count, 0) * lineHeight + 1);
};

/** Of the column of the steps, where it is narrowest; and a line of ten points (mm). */
const lettersOfLine = 48;
const lineHeight = 4.1;
