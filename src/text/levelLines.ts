import type { LengthStep } from "../core/lengthText";
import type { PlannedLevel } from "../core/plan/plan";
import { levelWords } from "./pictures";
import { noBreakSpace, shownLength } from "./shownLength";

/**
 * The lines a form is marked with before anything is pinned: where every piece and every reading is found again. Each is
 * as far below the nape as the BODY has that level, straight down and not along the back. A line nobody measured says so.
 */
export interface LevelLine {
  readonly name: PlannedLevel["name"];
  readonly level: string;
  readonly below: string;
  readonly isGuessed: boolean;
}

export function levelLines(levels: readonly PlannedLevel[], step: LengthStep): readonly LevelLine[] {
  const isWaistGuessed = levels.some(
    ({ name, depthBelowNape }) => name === "waist" && depthBelowNape.kind === "estimated",
  );
  return levels
    .toSorted((one, other) => one.depthBelowNape.value - other.depthBelowNape.value)
    .map(({ name, depthBelowNape }) => ({
      name,
      level: levelWords[name],
      below: shownLength(depthBelowNape.value, step),
      isGuessed: depthBelowNape.kind === "estimated" || (isWaistGuessed && hangsFromWaist.includes(name)),
    }));
}

/** The hips are measured from the waist: where that is guessed, so are they, however well the way between was read. */
const hangsFromWaist: readonly PlannedLevel["name"][] = ["highHip", "fullHip"];

/** The step before the first piece, whole: `Mark five level lines on the form, straight down from the nape: bust 10 in, …` */
export function markLinesSentence(levels: readonly PlannedLevel[], step: LengthStep): string {
  const lines = levelLines(levels, step);
  const allGuessed = lines.every(({ isGuessed }) => isGuessed);
  const each = lines.map(({ level, below, isGuessed }) => {
    const place = `${level}${noBreakSpace}${below}`;
    return isGuessed && !allGuessed ? `${place} (estimated)` : place;
  });
  return `Mark ${countWords[lines.length] ?? String(lines.length)} level lines on the form, straight down from the nape: ${each.join(", ")}.${allGuessed ? ` ${markLinesWords.allGuessed}` : ""}`;
}

export const markLinesWords = {
  title: "Before the first piece: mark the lines",
  how: "Measure the form’s nape above the floor and subtract each figure; fix a pointer at that height, turn the form past it, and mark the line at short steps.",
  why: "These are the person’s heights, not the form’s own: a line may lie a little off the form’s own waist.",
  allGuessed: "These heights are estimated: the person’s heights above the floor make them the person’s own.",
} as const;

const countWords: { readonly [count: number]: string } = { 1: "one", 2: "two", 3: "three", 4: "four", 5: "five" };
