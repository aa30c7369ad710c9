import { leastLineGap } from "../body/heightReadings";
import { type LevelReadings, torsoReadings } from "../body/levelReadings";
import type { Measurements } from "../body/measurements";
import { solveSection } from "../body/solveSection";
import { type SectionAt, type TorsoLine, torsoCurve, withLowerBreast } from "../body/torsoCurve";
import { type ByLevel, type LevelName, levelNames, levelReadingNames, tapeReadingNames } from "../body/vocabulary";
import { type Millimetres, mm } from "../units";

/**
 * What was read of the bare form on one of the person's lines, in the words of the vocabulary. The depth is where the
 * line was marked then; null is the person's line wherever it lies now.
 */
export interface LineReading {
  readonly depthBelowNape: Millimetres | null;
  readonly readings: { readonly [name in LineReadingName]?: Millimetres };
}
export type LineReadingName = (typeof tapeReadingNames)[number] | "Breadth" | "Depth";
export const lineReadingNames: readonly LineReadingName[] = [...tapeReadingNames, "Breadth", "Depth"];

export type FormLines = { readonly [level in LevelName]?: LineReading };

/** The bare form at one height where something is known of it: one of its own levels, or one of the person's lines. */
export interface FormSection {
  readonly name: LevelName;
  readonly depthBelowNape: number;
  readonly readings: LevelReadings;
  /** Read on a marked line, and not at a level of the form's own. */
  readonly isLine: boolean;
}

/** Everything known of the bare form, from the top down, and its curve between. */
export interface FormCurve {
  readonly levelSections: readonly FormSection[];
  readonly lines: readonly TorsoLine[];
  readonly sectionAt: SectionAt;
}

/**
 * What was read of the form at its own levels with what was read on the person's lines put in its place, level by level:
 * a level that was read on a line has its place and everything else from there. Without the person's depths the places
 * are left out, for checks of the readings alone.
 */
export function formAsRead(own: Measurements, lines: FormLines, depths: ByLevel<number> | null): Measurements {
  return levelNames.reduce((all, level): Measurements => {
    const line = lines[level];
    if (line?.readings.Girth === undefined) return all;
    const kept = Object.entries(all).filter(
      ([name]) => !levelReadingNames.some((reading) => name === `${level}${reading}`),
    );
    const read = lineReadingNames.flatMap((name) => {
      const length = line.readings[name];
      return length === undefined ? [] : [[`${level}${name}`, length] as const];
    });
    const place = depths === null ? [] : [[`${level}BelowNape`, line.depthBelowNape ?? mm(depths[level])] as const];
    return Object.fromEntries([...kept, ...read, ...place]);
  }, own);
}

export function formCurve(own: Measurements, lines: FormLines, depths: ByLevel<number>): FormCurve {
  const read = formAsRead(own, lines, depths);
  const { levels } = torsoReadings(read);
  const levelSections = withoutCrowded(
    levelNames.map((name) => ({
      name,
      depthBelowNape: levels[name].depthBelowNape.value,
      readings: levels[name],
      isLine: lines[name]?.readings.Girth !== undefined,
    })),
  );
  // A form stands for everybody: it is taken as even left and right, and what it leans shows when the tape is read again.
  const solved = levelSections.map(
    ({ name, depthBelowNape, readings }): TorsoLine => ({
      name,
      depthBelowNape,
      section: solveSection({ ...readings, quarters: null }),
    }),
  );
  const curve = read.lowerBreastGirth === undefined ? solved : withLowerBreast(solved, read.lowerBreastGirth);
  return { levelSections, lines: curve, sectionAt: torsoCurve(curve) };
}

/** A level of the form's own so close to a line that was read, or out of order with it, tells nothing more. */
function withoutCrowded(levelSections: readonly FormSection[]): readonly FormSection[] {
  const lines = levelSections.filter(({ isLine }) => isLine);
  if (lines.length === 0) return levelSections;
  const isClear = (levelSection: FormSection, i: number) =>
    levelSection.isLine ||
    lines.every((line) => {
      const gap = levelSection.depthBelowNape - line.depthBelowNape;
      return levelSections.indexOf(line) < i ? gap >= crowded : gap <= -crowded;
    });
  return levelSections
    .filter(isClear)
    .toSorted((one, other) => one.depthBelowNape - other.depthBelowNape)
    .filter((levelSection, i, all) => levelSection.depthBelowNape - (all[i - 1]?.depthBelowNape ?? 0) >= leastLineGap);
}

/** Closer than this (mm), how well a level of the form's own was found decides more than what was read there. */
export const crowded = 25;
