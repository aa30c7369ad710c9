import { type LevelName, levelNames } from "../../core/body/vocabulary";
import type { CoverCloth, Making } from "../../document/fittingLimits";
import type { Outlook } from "./stepOutlook";
import { type Step, type StepName, step } from "./step";
import type { WorkState } from "./workState";

/** What a step of the making notes once it is done; every other step notes something else. */
export const makingOfStep = {
  "cut-cover": "coverCut",
  "sew-cover": "coverSewn",
  "fit-cover": "coverFitted",
  "close-cover": "coverClosed",
  "correct-cover": "coverCorrected",
  "hem-cover": "coverHemmed",
  "waist-tape": "waistTape",
  "style-lines": "styleLines",
  "cut-arm": "armCut",
  "sew-arm": "armSewn",
  "fill-arm": "armFilled",
  "hang-arm": "armHung",
  "put-away": "putAway",
} as const satisfies { readonly [name in StepName]?: Making };
export type MakingStepName = keyof typeof makingOfStep;

/** Over the finished padding: its cover, the waist tape and lines, the arm, and how it is kept. Then the whole job is done. */
export function makingStep(state: WorkState, outlook: Outlook): Step {
  return (
    coverStep(state, outlook) ??
    firstToMake(state, ["waist-tape"]) ??
    markAbove(state, outlook) ??
    firstToMake(state, ["style-lines"]) ??
    (outlook.hasArm ? firstToMake(state, ["cut-arm", "sew-arm", "fill-arm", "hang-arm"]) : null) ??
    firstToMake(state, ["put-away"]) ??
    step("done")
  );
}

const firstToMake = ({ made }: WorkState, names: readonly MakingStepName[]): Step | null => {
  const name = names.find((one) => !made.has(makingOfStep[one]));
  return name === undefined ? null : step(name);
};

/** An armhole line that lies farther in on the person is marked on the cover, or where there is none on the padding. */
function markAbove(state: WorkState, { above }: Outlook): Step | null {
  const build = above.find(({ id, act }) => act.what === "markInward" && !isMarkedAbove(state, id));
  return build === undefined ? null : step("mark-armhole", { build });
}

/** A mark on the padding is not seen through the cover that went over it since. */
export const isMarkedAbove = ({ builtAbove, markedUncovered, cloth }: WorkState, id: string): boolean =>
  builtAbove.has(id) && (cloth === "none" || !markedUncovered.has(id));

/** A cover that is cut from panels is measured for before it is cut; a knit that is pinned as it is, is fitted at once. */
function coverStep(state: WorkState, { coverOff, expectedOverCover }: Outlook): Step | null {
  const { cloth } = state;
  if (cloth === null) return step("choose-cover");
  if (cloth === "none") return null;
  if (isCutFromPanels(cloth) && !state.made.has("coverCut") && !state.isReadBetween) return step("read-between");
  const sewn = isCutFromPanels(cloth) ? (["cut-cover", "sew-cover"] as const) : [];
  const open = firstToMake(state, [...sewn, "fit-cover", "close-cover"]);
  if (open !== null) return open;
  const unread = levelNames.filter((level) => !state.readOverCover.has(level));
  if (unread.length > 0) return readCover(unread, expectedOverCover);
  const off = coverOff.map(({ level }) => level);
  if (off.length > 0 && !state.made.has("coverCorrected")) return step("correct-cover", { levels: off, off: coverOff });
  // Corrected is not yet right: the tape says so once, where it was off.
  const again = state.leftOut.has("coverCorrected") ? [] : off.filter((level) => !state.readOverCorrected.has(level));
  if (again.length > 0) return readCover(again, expectedOverCover);
  return firstToMake(state, ["hem-cover"]);
}

function readCover(levels: readonly LevelName[], expectedOverCover: Outlook["expectedOverCover"]): Step {
  const names = levels.flatMap((level) => [`${level}Girth`, `${level}FrontArc`] as const);
  const known = names.flatMap((name) => {
    const value = expectedOverCover[name];
    return value === undefined ? [] : [[name, value] as const];
  });
  return step("read-cover", { levels, names, expected: Object.fromEntries(known) });
}

export const isCutFromPanels = (cloth: CoverCloth): boolean => cloth === "knit" || cloth === "woven";
