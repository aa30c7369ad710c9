import { type LevelName, levelNames, type tapeReadingNames } from "../body/vocabulary";
import type { Batting, BattingRole } from "../material";
import type { Outline } from "../geometry/outline";
import type { LearnedPiece } from "../learning/layerCounts";
import type { BareDeviation } from "../learning/learningState";
import type { LevelOutline } from "../padding/layerThickness";
import type { Millimetres } from "../units";

export const quarterNames = ["leftFront", "rightFront", "leftBack", "rightBack"] as const;

/** What the tape was read at: a level, all around or in part. */
export type TapeReadingName = `${LevelName}${(typeof tapeReadingNames)[number]}`;

/** One round of re-measuring: what lay on the form then, and what the tape read where it was read. */
export interface Reread {
  readonly pinned: readonly LearnedPiece[];
  readonly readings: { readonly [name in TapeReadingName]?: Millimetres };
}

/**
 * A level of the bare form: its outline as it was measured, and as it would be with another exponent and breadth,
 * reading the same.
 */
export interface EvidenceSection extends LevelOutline {
  readonly reshaped: (exponent: number, lnBreadth: number) => Outline;
}

/**
 * Everything that is known before and from the readings. Level sections are the levels from the bust down, at the
 * body's depths below the nape.
 */
export interface Evidence {
  readonly levelSections: readonly EvidenceSection[];
  readonly battings: { readonly [role in BattingRole]: Batting };
  readonly bareDeviations: readonly BareDeviation[];
  readonly rereads: readonly Reread[];
  readonly pinnedNow: readonly LearnedPiece[];
  /** One standard deviation of a single tape reading (mm). */
  readonly readingError: number;
}

/** One reading: what it is called, the quarters it spans at a level, what lay on the form, and its value (mm). */
export interface Observation {
  readonly name: TapeReadingName;
  readonly level: number;
  readonly pinned: readonly LearnedPiece[];
  readonly quarters: { readonly [name in (typeof quarterNames)[number]]: number };
  readonly value: number;
}

const spans = {
  Girth: { leftFront: 1, rightFront: 1, leftBack: 1, rightBack: 1 },
  FrontArc: { leftFront: 1, rightFront: 1, leftBack: 0, rightBack: 0 },
  BackArc: { leftFront: 0, rightFront: 0, leftBack: 1, rightBack: 1 },
  LeftFrontArc: { leftFront: 1, rightFront: 0, leftBack: 0, rightBack: 0 },
  RightFrontArc: { leftFront: 0, rightFront: 1, leftBack: 0, rightBack: 0 },
  LeftBackArc: { leftFront: 0, rightFront: 0, leftBack: 1, rightBack: 0 },
  RightBackArc: { leftFront: 0, rightFront: 0, leftBack: 0, rightBack: 1 },
} as const;

/** The level a reading is taken at, counted from the bust down, and the quarters it spans. */
export interface ReadingPlace {
  readonly level: number;
  readonly quarters: Observation["quarters"];
}

const places = new Map(
  levelNames.flatMap((name, level) =>
    Object.entries(spans).map(([reading, quarters]): readonly [string, ReadingPlace] => [
      `${name}${reading}`,
      { level, quarters },
    ]),
  ),
);

/** The place of a measurement, if a tape over padding reads it: a breadth and a length up and down have none. */
export const readingPlace = (name: string): ReadingPlace | null => places.get(name) ?? null;

export const isTapeReading = (name: string): name is TapeReadingName => places.has(name);

/** Every reading as a row of its own, in the order it was taken. */
export function observations({ rereads }: Pick<Evidence, "rereads">): readonly Observation[] {
  return rereads.flatMap(({ pinned, readings }) =>
    [...places].flatMap(([name, place]): readonly Observation[] => {
      if (!isTapeReading(name)) return [];
      const value = readings[name];
      return value === undefined ? [] : [{ name, pinned, ...place, value }];
    }),
  );
}
