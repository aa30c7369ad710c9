import { type ByLevel, type LevelName, levelNames } from "../../core/body/vocabulary";
import { askedParts, type LinePart, linePartName, lineParts } from "../../core/form/linePart";
import type { Plan } from "../../core/plan/plan";
import { onLine } from "../../core/tolerances";
import { type Millimetres, mm } from "../../core/units";
import { entryLength, type Fitting } from "../../document/fitting";
import { bareEntries, type MeasuredEntry } from "../../document/fittingLines";
import { isBare } from "./isBare";

/**
 * The work on the bare form before the first piece: the form is made ready, the person's level lines are marked on it, and it
 * is read there. Until that is done the plan stands on a form guessed between its own levels.
 */
export interface LinesAtForm {
  /** Top to bottom. */
  readonly lines: readonly LineAtForm[];
  readonly next: LinesStep;
}

export interface LineAtForm {
  readonly level: LevelName;
  /** Below the nape, on the person and so on the form (mm). */
  readonly depth: Millimetres;
  readonly isMarked: boolean;
  /** What was read of the bare form at this depth; a reading at another depth is no reading of this line. */
  readonly read: { readonly [part in LinePart]?: Millimetres };
}

export type LinesStep =
  | { readonly do: "prepare" }
  | { readonly do: "mark"; readonly level: LevelName }
  | { readonly do: "read"; readonly level: LevelName; readonly part: LinePart }
  /** The work has gone on, or all is read or passed over, here or before the fitting was begun. */
  | { readonly do: "done" };

export function linesAtForm(plan: Plan, { work, unit, form }: Pick<Fitting, "work" | "unit" | "form">): LinesAtForm {
  const depths = depthsOf(plan);
  const marked = markedDepths(work, depths);
  const bare = bareEntries(work);
  const lines = levelNames.map((level): LineAtForm => {
    const depth = depths[level];
    const read = bareReadings(bare, unit, level, depth);
    // Nobody reads a form on a line that is not there.
    const isMarked = isSameLine(marked[level], depth) || read.girth !== undefined;
    return { level, depth, isMarked, read };
  });
  const isKnown = form.readAtBodyLines === true || !isBare(work) || arePassedOver(work);
  return { lines, next: isKnown ? { do: "done" } : nextStep(work, lines) };
}

function nextStep(work: Fitting["work"], lines: readonly LineAtForm[]): LinesStep {
  if (!work.some((entry) => entry.did === "prepared")) return { do: "prepare" };
  const unmarked = lines.find(({ isMarked }) => !isMarked);
  if (unmarked) return { do: "mark", level: unmarked.level };
  const [open] = openParts(lines);
  return open === undefined ? { do: "done" } : { do: "read", ...open };
}

/** Nobody is asked again for what was left out, nor once the work has gone on. */
const arePassedOver = (work: Fitting["work"]): boolean =>
  work.some(
    (entry, at) =>
      entry.did === "trial" ||
      entry.did === "cut" ||
      (entry.did === "measured" &&
        Object.keys(entry.readings).length === 0 &&
        work.slice(0, at).some(({ did }) => did === "marked")),
  );

/** One reading of one line. */
export interface LineReadingAsked {
  readonly level: LevelName;
  readonly part: LinePart;
}

export const isAmong = (asked: readonly LineReadingAsked[], { level, part }: LineReadingAsked): boolean =>
  asked.some((one) => one.level === level && one.part === part);

/** What is asked for and was not read yet, from the top line down. */
export const openParts = (lines: readonly LineAtForm[]): readonly LineReadingAsked[] =>
  lines.flatMap(({ level, read }) =>
    askedParts.filter((part) => read[part] === undefined).map((part) => ({ level, part })),
  );

/** What was picked out comes first; then the next reading that was not left out on this visit. */
export function linesStepHere(
  next: LinesStep,
  open: readonly LineReadingAsked[],
  skipped: readonly LineReadingAsked[],
  chosen: LineReadingAsked | null,
): LinesStep {
  if (next.do === "prepare" || next.do === "mark") return next;
  if (chosen !== null) return { do: "read", ...chosen };
  const asked = next.do === "done" ? undefined : open.find((one) => !isAmong(skipped, one));
  return asked === undefined ? { do: "done" } : { do: "read", ...asked };
}

const depthsOf = (plan: Plan): ByLevel<Millimetres> =>
  Object.fromEntries(
    plan.levels.map(({ name, depthBelowNape }) => [name, mm(depthBelowNape.value)]),
  ) as ByLevel<Millimetres>;

/** The depth each line was last marked at; an entry without depths speaks of the lines where they lie now. */
function markedDepths(work: Fitting["work"], now: ByLevel<Millimetres>): { readonly [level in LevelName]?: number } {
  return Object.assign({}, ...work.flatMap((entry) => (entry.did === "marked" ? [entry.belowNapeMm ?? now] : [])));
}

const isSameLine = (marked: number | undefined, depth: number): boolean =>
  marked !== undefined && Math.abs(marked - depth) <= onLine;

/** A reading that names no depth was taken on the line wherever it lies now. */
function bareReadings(
  bare: readonly MeasuredEntry[],
  unit: Fitting["unit"],
  level: LevelName,
  depth: number,
): LineAtForm["read"] {
  const here = bare.filter(({ belowNapeMm }) => isSameLine(belowNapeMm?.[level] ?? depth, depth));
  return Object.fromEntries(
    lineParts.flatMap((part) => {
      const name = linePartName(level, part);
      const read = here.findLast(({ readings }) => readings[name] !== undefined)?.readings[name];
      const length = read === undefined ? null : entryLength(read, unit);
      return length?.ok ? [[part, length.value]] : [];
    }),
  );
}
