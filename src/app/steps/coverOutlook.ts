import { coverPressing, type PressedReading, usualPressing } from "../../core/calibration/coverPressing";
import type { LevelPosterior } from "../../core/calibration/calibration";
import { levelNames, type MeasurementName } from "../../core/body/vocabulary";
import type { Plan, TapeReading } from "../../core/plan/plan";
import type { Replan } from "../../core/plan/replanFitting";
import { onTarget, tapeAgreement } from "../../core/tolerances";
import { type Fitting, readLengths } from "../../document/fitting";
import { lastChange } from "../progress/lastChange";
import type { CoverOff } from "./step";

/** What the tape should read over the cover (mm), and where it reads too far from the person for the cover to be left as it is. */
export interface CoverOutlook {
  readonly expectedOverCover: { readonly [name in MeasurementName]?: number };
  readonly coverOff: readonly CoverOff[];
}

/**
 * The cover presses the batting in by a share of what it adds, learned from what was read over the cover already; what is
 * known of the batting itself is taken as it is, and stays so.
 */
export function coverOutlook(
  plan: Plan,
  { calibration: { levels } }: Replan,
  fitting: Pick<Fitting, "work" | "unit">,
): CoverOutlook {
  const read = readOverCover(fitting);
  const { share } = coverPressing(
    levelNames.flatMap((level): readonly PressedReading[] => {
      const over = read[`${level}Girth`];
      const { girth: added } = addedAt(levels[level], plan.bareForm[level]);
      return over === undefined ? [] : [{ added, lost: levels[level].girth.value - over }];
    }),
  );
  return {
    expectedOverCover: Object.fromEntries(
      levelNames.flatMap((level) => {
        const { girth, frontArc } = levels[level];
        const added = addedAt(levels[level], plan.bareForm[level]);
        return [
          [`${level}Girth`, girth.value - share * added.girth],
          [`${level}FrontArc`, frontArc.value - share * added.front],
        ];
      }),
    ),
    coverOff: plan.levels.flatMap(({ name, body }): readonly CoverOff[] => {
      const girth = read[`${name}Girth`];
      if (girth === undefined) return [];
      // A cover takes in no more than it stands out from the padding, and gives back no more than it pressed.
      const [over, byCover] = [girth - body.girth.value, girth - levels[name].girth.value];
      if (over > onTarget && byCover > tapeAgreement) return [{ level: name, over: Math.min(over, byCover) }];
      const pressed = usualPressing.share * addedAt(levels[name], plan.bareForm[name]).girth;
      return -over > onTarget + pressed ? [{ level: name, over }] : [];
    }),
  };
}

/** What batting adds all around and in front: what the padding reads, less what the bare form does. */
function addedAt({ girth, frontArc }: LevelPosterior, bare: TapeReading) {
  return { girth: girth.value - bare.girth, front: frontArc.value - bare.frontArc };
}

/** The last reading of each place over the cover (mm), since a piece was pinned or taken off beneath it. */
function readOverCover({ work, unit }: Pick<Fitting, "work" | "unit">): {
  readonly [name in MeasurementName]?: number;
} {
  const since = work.slice(lastChange(work) + 1);
  return Object.assign(
    {},
    ...since.flatMap((entry) =>
      entry.did === "measured" && entry.over === "cover" ? [readLengths(entry.readings, unit)] : [],
    ),
  );
}
