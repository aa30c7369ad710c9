import { type ByLevel, type LevelName, levelNames, type MeasurementName } from "../core/body/vocabulary";
import type { Plan } from "../core/plan/plan";
import { onLine } from "../core/tolerances";
import { type Millimetres, mm } from "../core/units";
import { entryLength, type Fitting, type WorkEntry } from "../document/fitting";

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

/** What is read on each line, in the order it is asked for. */
export const lineParts = ["girth", "frontArc", "breadth"] as const;
export type LinePart = (typeof lineParts)[number];

export type LinesStep =
  | { readonly do: "prepare" }
  | { readonly do: "mark"; readonly level: LevelName }
  | { readonly do: "read"; readonly level: LevelName; readonly part: LinePart }
  /** A piece lies on the form already, or all is read, here or before the fitting was begun. */
  | { readonly do: "done" };

export const linePartName = (level: LevelName, part: LinePart): MeasurementName =>
  part === "girth" ? `${level}Girth` : part === "frontArc" ? `${level}FrontArc` : `${level}Breadth`;

/** Whether the bare form can still be read: nothing is pinned. */
const isBare = (work: Fitting["work"]): boolean => {
  const on = new Set<string>();
  for (const entry of work) {
    if (entry.did === "pinned") on.add(entry.piece.id);
    if (entry.did === "unpinned") on.delete(entry.pieceId);
  }
  return on.size === 0;
};

export function linesAtForm(plan: Plan, { work, unit, form }: Pick<Fitting, "work" | "unit" | "form">): LinesAtForm {
  const depths = depthsOf(plan);
  const marked = markedDepths(work, depths);
  const lines = levelNames.map(
    (level): LineAtForm => ({
      level,
      depth: depths[level],
      isMarked: isSameLine(marked[level], depths[level]),
      read: bareReadings(work, unit, level, depths[level]),
    }),
  );
  const isKnown = form.readAtBodyLines === true || !isBare(work);
  return { lines, next: isKnown ? { do: "done" } : nextStep(work, lines) };
}

function nextStep(work: Fitting["work"], lines: readonly LineAtForm[]): LinesStep {
  if (!work.some((entry) => entry.did === "prepared")) return { do: "prepare" };
  const unmarked = lines.find(({ isMarked }) => !isMarked);
  if (unmarked) return { do: "mark", level: unmarked.level };
  for (const { level, read } of lines) {
    const part = lineParts.find((name) => read[name] === undefined);
    if (part !== undefined) return { do: "read", level, part };
  }
  return { do: "done" };
}

const depthsOf = (plan: Plan): ByLevel<Millimetres> =>
  Object.fromEntries(plan.levels.map(({ name, drop }) => [name, mm(drop.value)])) as ByLevel<Millimetres>;

/** The depth each line was last marked at; an entry without depths speaks of the lines where they lie now. */
function markedDepths(work: Fitting["work"], now: ByLevel<Millimetres>): { readonly [level in LevelName]?: number } {
  return Object.assign({}, ...work.flatMap((entry) => (entry.did === "marked" ? [entry.belowNapeMm ?? now] : [])));
}

const isSameLine = (marked: number | undefined, depth: number): boolean =>
  marked !== undefined && Math.abs(marked - depth) <= onLine;

type Measured = Extract<WorkEntry, { readonly did: "measured" }>;

function bareReadings(
  work: Fitting["work"],
  unit: Fitting["unit"],
  level: LevelName,
  depth: number,
): LineAtForm["read"] {
  const here = work.filter(
    (entry): entry is Measured => entry.did === "measured" && isSameLine(entry.belowNapeMm?.[level], depth),
  );
  return Object.fromEntries(
    lineParts.flatMap((part) => {
      const entry = here.findLast(({ readings }) => readings[linePartName(level, part)] !== undefined);
      const read = entry?.readings[linePartName(level, part)];
      const length = read === undefined ? null : entryLength(read, unit);
      return length?.ok ? [[part, length.value]] : [];
    }),
  );
}
