import { readingDraftKey } from "../../../app/session/commands";
import { lineProblem, slippedUnit } from "../../../app/progress/lineProblem";
import { isAmong, type LineAtForm, type LineReadingAsked, openParts } from "../../../app/progress/linesAtForm";
import { isContradiction, type MeasurementProblem } from "../../../core/body/plausibility";
import { type LinePart, linePartName } from "../../../core/form/linePart";
import { reachOf } from "../../../core/geometry/support";
import { parseLength } from "../../../core/lengthText";
import type { Plan } from "../../../core/plan/plan";
import { type LineChange, lineChange } from "../../../core/plan/lineChange";
import { type Millimetres, mm } from "../../../core/units";
import { useAnnounce } from "../../kit/Announcer";
import { lengthFieldState } from "../../../app/session/lengthFieldState";
import { linesWords } from "../../../text/linesAtForm";
import { lineWords } from "../../../text/pictures";
import { derivationOf, useDerived } from "../../kit/useDerived";
import { useDispatch, useDraft, useLengths, useStoreItself } from "../../kit/useStore";

interface LineReadingInput extends LineReadingAsked {
  readonly plan: Plan;
  readonly lines: readonly LineAtForm[];
  /** Asked for after this one; null for the last. */
  readonly after: LineReadingAsked | null;
  /** Told once it is saved, with what it changed in the plan. */
  readonly onKept: (change: LineChange) => void;
}

/** The reading of the bare form that is asked: its field, what is the matter with it, what the slab says, and how it is saved. */
export function useLineReading(input: LineReadingInput) {
  const { plan, level, part, after } = input;
  const { unit, step, write } = useLengths();
  const dispatch = useDispatch();
  const key = readingDraftKey(linePartName(level, part));
  const draft = useDraft("other", key);
  const typed = draft === undefined ? null : parseLength(draft, unit);
  const length = typed?.ok ? typed.value : null;
  const problem = useProblem(input, length);
  const expected = expectedReading(plan, level, part);
  const isReady = length !== null && (problem === null || !isContradiction(problem));
  const save = useSaved(input, draft, length);
  const slip = length === null ? null : slippedUnit(length, expected, unit);
  return {
    key,
    isReady,
    problem,
    slip: slip === null ? null : { unit: slip, mend: () => dispatch(asDraft(key, `${(draft ?? "").trim()} ${slip}`)) },
    keep: () => {
      if (isReady) save();
    },
    words:
      length === null || !isReady
        ? linesWords.read.saveNothing
        : linesWords.read.save(write(length), after === null ? null : nextWords(after, level)),
    expected: write(expected),
    state: lengthFieldState({
      entry: undefined,
      draft,
      unit,
      step,
      onDraft: (text) => dispatch(asDraft(key, text)),
      // Leaving the field keeps the text; only the slab or Enter makes a reading of it.
      onCommit: () => {},
    }),
  };
}

const asDraft = (key: string, text: string | null) => ({ does: "draft", of: "other", key, text }) as const;

function useProblem({ lines, level, part }: LineReadingInput, length: Millimetres | null): MeasurementProblem | null {
  const { planning, lengths } = useDerived();
  if (length === null || planning.kind === "waiting" || lengths === null) return null;
  return lineProblem(planning.form, lengths.form.lines, { level, part, depth: depthOf(lines, level), length });
}

/** Saves what was typed, and says what it changed in the plan. */
function useSaved(
  { plan, lines, level, part, onKept }: LineReadingInput,
  draft: string | undefined,
  length: Millimetres | null,
): () => void {
  const store = useStoreItself();
  const announce = useAnnounce();
  const { write } = useLengths();
  return () => {
    if (draft === undefined || length === null) return;
    const line = { level, depth: depthOf(lines, level) };
    const name = linePartName(level, part);
    store.dispatch({ does: "read", name, text: draft, line, at: new Date().toISOString() });
    const { planning } = derivationOf(store)(store.getState().fitting);
    if (planning.kind === "waiting") return;
    const change = lineChange(plan, planning.plan, level, part);
    const kept = linesWords.read.kept(lineWords[level], part, write(length));
    announce([kept, ...linesWords.changed(change, write)].join(" "));
    onKept(change);
  };
}

const depthOf = (lines: readonly LineAtForm[], level: LineAtForm["level"]): Millimetres =>
  lines.find((item) => item.level === level)?.depth ?? mm(0);

const nextWords = (next: LineReadingAsked, level: LineAtForm["level"]): string =>
  linesWords.read.next(lineWords[next.level], next.part, next.level === level);

/** What the plan takes the bare form to read there. */
function expectedReading(plan: Plan, level: LineAtForm["level"], part: LinePart): Millimetres {
  const planned = plan.levels.find(({ name }) => name === level);
  if (planned === undefined) return mm(0);
  const { left, right, front, back } = reachOf(planned.formSection);
  if (part === "breadth") return mm(left + right);
  return part === "depth" ? mm(front + back) : planned.form[part].value;
}

/** What is asked after this reading, as long as nothing more is left out. */
export const askedAfter = (
  lines: readonly LineAtForm[],
  reading: LineReadingAsked,
  skipped: readonly LineReadingAsked[],
): LineReadingAsked | null => openParts(lines).find((one) => !isAmong([reading, ...skipped], one)) ?? null;
