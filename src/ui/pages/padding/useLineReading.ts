import { readingDraftKey } from "../../../app/commands";
import { type LineAtForm, linePartName, type LinePart, lineParts } from "../../../app/linesAtForm";
import { type LevelName, levelNames } from "../../../core/body/vocabulary";
import { reachOf } from "../../../core/geometry/support";
import { parseLength } from "../../../core/lengthText";
import type { Plan } from "../../../core/plan/plan";
import { type Millimetres, mm } from "../../../core/units";
import { useAnnounce } from "../../Announcer";
import { lengthFieldState } from "../../field/lengthFieldState";
import { levelLineNames, linesWords } from "../../text/linesAtForm";
import { useDispatch, useDraft, useLengths } from "../../useStore";

/** The reading of the bare form that is asked: its field, what the slab says, and how it is saved. */
export function useLineReading(plan: Plan, lines: readonly LineAtForm[], level: LevelName, part: LinePart) {
  const { unit, step, write } = useLengths();
  const dispatch = useDispatch();
  const announce = useAnnounce();
  const name = linePartName(level, part);
  const key = readingDraftKey(name);
  const draft = useDraft("other", key);
  const typed = draft === undefined ? null : parseLength(draft, unit);
  const depth = lines.find((item) => item.level === level)?.depth ?? mm(0);
  const after = nextAfter(lines, level, part);
  const keep = () => {
    if (draft === undefined) return;
    dispatch({ does: "read", name, text: draft, line: { level, depth }, at: new Date().toISOString() });
    if (typed?.ok) announce(linesWords.read.kept(levelLineNames[level], part, write(typed.value)));
  };
  const expected = expectedReading(plan, level, part);
  return {
    key,
    isReady: typed?.ok === true,
    keep,
    save: typed?.ok
      ? linesWords.read.save(write(typed.value), after && nextWords(after, level))
      : linesWords.read.saveNothing,
    expected: expected === null ? null : write(expected),
    state: lengthFieldState({
      entry: undefined,
      draft,
      unit,
      step,
      onDraft: (text) => dispatch({ does: "draft", of: "other", key, text }),
      // Leaving the field keeps the text; only the slab or Enter makes a reading of it.
      onCommit: () => {},
    }),
  };
}

interface LineReading {
  readonly level: LevelName;
  readonly part: LinePart;
}

const nextWords = (next: LineReading, level: LevelName): string =>
  linesWords.read.next(levelLineNames[next.level], next.part, next.level === level);

/** What the plan takes the bare form to read there. */
function expectedReading(plan: Plan, level: LevelName, part: LinePart): Millimetres | null {
  const planned = plan.levels.find(({ name }) => name === level);
  if (planned === undefined) return null;
  if (part === "breadth") {
    const { left, right } = reachOf(planned.formSection);
    return mm(left + right);
  }
  return planned.form[part].value;
}

/** What is asked next, as long as nothing more is left out. */
function nextAfter(lines: readonly LineAtForm[], level: LevelName, part: LinePart): LineReading | null {
  const all = levelNames.flatMap((name) => lineParts.map((each) => ({ level: name, part: each })));
  const at = all.findIndex((item) => item.level === level && item.part === part);
  const isOpen = (item: LineReading) => lines.find((line) => line.level === item.level)?.read[item.part] === undefined;
  return all.slice(at + 1).find(isOpen) ?? null;
}
