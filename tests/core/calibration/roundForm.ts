import { levelNames } from "../../../src/core/body/vocabulary";
import type { BareSpread, Evidence, Reread, TapeReadingName } from "../../../src/core/calibration/evidence";
import { sectionOutline } from "../../../src/core/geometry/outline";
import type { Batting, BattingRole } from "../../../src/core/material";
import type { Pad } from "../../../src/core/padding/pad";
import type { Station } from "../../../src/core/padding/stack";
import { mm, ratio } from "../../../src/core/units";

/**
 * A form that is a circle at every level, under whole rounds: what the tape reads over it is 2 pi (r + t), with nothing of
 * the core's own tape in it (Steiner). Radius in mm.
 */
export const radius = 115;
const gap = 100;

export const stations: readonly Station[] = levelNames.map((_, level) => ({
  drop: 200 + gap * level,
  outline: sectionOutline(
    {
      leftBreadth: radius,
      rightBreadth: radius,
      frontDepth: radius,
      backDepth: radius,
      frontExponent: 2,
      backExponent: 2,
    },
    24,
  ),
}));

/** A round of so many plies that lies on the waist alone, with its whole thickness there. */
export function waistRound(plies: number, batting: BattingRole = "building"): Pad {
  const waist = (stations[2] as Station).drop;
  const half = Math.PI * radius;
  const rows = [-60, 0, 60].map((below) => ({ drop: mm(waist + below), start: mm(-half), end: mm(half) }));
  return { zone: "round", batting, plies, thickness: mm(plies), feather: mm(30), rows };
}

export const batting = (layerThickness: number, spread: number): Batting => ({
  name: "batting",
  layerThickness: mm(layerThickness),
  spread: ratio(spread),
});

/** The bare form's girth at every level, as an unerring tape reads it. */
export const bareGirth = 2 * Math.PI * radius;

export const spreads = (girth: number, halves: number): readonly BareSpread[] =>
  levelNames.map(() => ({ girth, frontLessBack: halves, leftLessRight: halves }));

export const waistRead = (girth: number, pinned: readonly Pad[]): Reread => read({ waistGirth: girth }, pinned);

export const read = (readings: { readonly [name in TapeReadingName]?: number }, pinned: readonly Pad[]): Reread => ({
  pinned,
  readings: Object.fromEntries(Object.entries(readings).map(([name, value]) => [name, mm(value)])),
});

/** Evidence with the usual errors, changed where asked: a tape read within 5 mm, a batting that may be half or double. */
export const evidenceOf = (changes: Partial<Evidence>): Evidence => ({
  stations,
  battings: { building: batting(7, 0.4), finishing: batting(3, 0.4) },
  bareSpreads: spreads(5, 7),
  rereads: [],
  pinnedNow: [],
  readingError: 5,
  ...changes,
});
