import { levelNames } from "../../../src/core/body/vocabulary";
import type { Evidence, EvidenceSection, Reread, TapeReadingName } from "../../../src/core/calibration/evidence";
import { sectionOutline } from "../../../src/core/geometry/outline";
import type { Batting, BattingRole } from "../../../src/core/material";
import type { LearnedPiece } from "../../../src/core/learning/layerCounts";
import type { BareDeviation } from "../../../src/core/learning/learningState";
import type { LevelOutline } from "../../../src/core/padding/layerThickness";
import { mm, ratio } from "../../../src/core/units";
import { layerOf, straightRows } from "../../support/samplePiece";

/**
 * A form that is a circle at every level, under whole rounds: what the tape reads over it is 2 pi (r + t), with nothing of
 * the core's own tape in it (Steiner). Radius in mm.
 */
export const radius = 115;
const gap = 100;

const circle = sectionOutline(
  {
    leftBreadth: radius,
    rightBreadth: radius,
    frontDepth: radius,
    backDepth: radius,
    frontExponent: 2,
    backExponent: 2,
  },
  24,
);

/** The form is known to be a circle: no exponent and no breadth is left to learn. */
export const levelSections: readonly EvidenceSection[] = levelNames.map((_, level) => ({
  depth: 200 + gap * level,
  outline: circle,
  reshaped: () => circle,
}));

/** A wrap of so many layers that lies on the waist alone, with its whole thickness there. */
export function waistRound(layers: number, batting: BattingRole = "building"): LearnedPiece {
  const { depth } = levelSections[2] as LevelOutline;
  const half = Math.PI * radius;
  const rows = straightRows([depth - 60, depth, depth + 60], -half, half);
  return {
    id: `wrap of ${layers} ${batting}`,
    anchor: "centerFront",
    layers: Array.from({ length: layers }, () => layerOf(rows, { batting, wrap: true, thickness: mm(1) })),
  };
}

export const batting = (layerThickness: number, deviation: number): Batting => ({
  name: "batting",
  layerThickness: mm(layerThickness),
  relativeDeviation: ratio(deviation),
});

/** The bare form's girth at every level, as an unerring tape reads it. */
export const bareGirth = 2 * Math.PI * radius;

export const deviations = (girth: number, halves: number): readonly BareDeviation[] =>
  levelNames.map(() => ({ girth, frontLessBack: halves, leftLessRight: halves, exponent: 0.4, breadth: 0.02 }));

export const waistRead = (girth: number, pinned: readonly LearnedPiece[]): Reread =>
  read({ waistGirth: girth }, pinned);

export const read = (
  readings: { readonly [name in TapeReadingName]?: number },
  pinned: readonly LearnedPiece[],
): Reread => ({
  pinned,
  readings: Object.fromEntries(Object.entries(readings).map(([name, value]) => [name, mm(value)])),
});

/** Evidence with the usual errors, changed where asked: a tape read within 5 mm, a batting that may be half or double. */
export const evidenceOf = (changes: Partial<Evidence>): Evidence => ({
  levelSections,
  battings: { building: batting(7, 0.4), finishing: batting(3, 0.4) },
  bareDeviations: deviations(5, 7),
  rereads: [],
  pinnedNow: [],
  readingError: 5,
  ...changes,
});
