import { type LevelName, levelNames } from "../body/vocabulary";
import type { CoverLine } from "./coverRows";
import type { ReadOver } from "./readSurface";

/**
 * Heights between two level lines where the tape over the padding tells a cover most, by the level above: the heights of
 * `coverLines` that bear no name. The form's lower edge is not asked for.
 */
export const levelsAbove = levelNames.filter((level): level is Exclude<LevelName, "fullHip"> => level !== "fullHip");
export type LevelAbove = (typeof levelsAbove)[number];

/** How far below the nape it was read between two lines (mm), by the level above. */
export type BetweenHeights = { readonly [level in LevelAbove]?: number };

type Below<Level extends LevelAbove> = `below${Capitalize<Level>}`;
const below = <Level extends LevelAbove>(level: Level): Below<Level> =>
  `below${level.charAt(0).toUpperCase()}${level.slice(1)}` as Below<Level>;

/** All around, and in front from side seam to side seam, at each of them. */
export type BetweenReadingName = `${Below<LevelAbove>}${"Girth" | "FrontArc"}`;
export const betweenReadingNames: readonly BetweenReadingName[] = levelsAbove.flatMap((level) =>
  (["Girth", "FrontArc"] as const).map((part) => `${below(level)}${part}` as const),
);

export const betweenName = (level: LevelAbove, part: "Girth" | "FrontArc"): BetweenReadingName =>
  `${below(level)}${part}`;

/** A line between two levels, by the level above it. */
export interface BetweenLine {
  readonly above: LevelAbove;
  readonly depthBelowNape: number;
}

/** Which of a cover's lines lie between two level lines, and below which. */
export const betweenLines = (lines: readonly CoverLine[]): readonly BetweenLine[] =>
  lines.flatMap(({ name, depthBelowNape }, i): readonly BetweenLine[] => {
    const above = levelsAbove.find((level) => level === lines[i - 1]?.name);
    return name === "between" && above !== undefined ? [{ above, depthBelowNape }] : [];
  });

/**
 * What was read between the lines (mm), as the cover takes it: a girth without its front is of no use to it, nor a front
 * without its girth, and a front as long as its girth is no reading of either.
 */
export const betweenReadings = (
  lines: readonly CoverLine[],
  read: { readonly [name in BetweenReadingName]?: number },
): readonly ReadOver[] =>
  betweenLines(lines).flatMap(({ above, depthBelowNape }): readonly ReadOver[] => {
    const [girth, front] = [read[betweenName(above, "Girth")], read[betweenName(above, "FrontArc")]];
    if (girth === undefined || front === undefined || front >= girth) return [];
    return [{ name: "between", depthBelowNape, girth, front }];
  });
