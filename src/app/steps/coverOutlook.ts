import { coverPressing, type PressedReading } from "../../core/calibration/coverPressing";
import type { LevelPosterior } from "../../core/calibration/calibration";
import { type ByLevel, type LevelName, levelNames, type MeasurementName } from "../../core/body/vocabulary";
import type { Plan } from "../../core/plan/plan";
import type { Replan } from "../../core/plan/replanFitting";
import { onTarget } from "../../core/tolerances";
import { entryLength, type Fitting } from "../../document/fitting";
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
  const { share } = coverPressing(levelNames.flatMap((level) => pressedReading(levels[level], read[`${level}Girth`])));
  return {
    expectedOverCover: Object.fromEntries(
      levelNames.flatMap((level) => {
        const { girth, front, bareGirth, bareFront } = lengthsOf(levels, level);
        return [
          [`${level}Girth`, girth - share * (girth - bareGirth)],
          [`${level}FrontArc`, front - share * (front - bareFront)],
        ];
      }),
    ),
    coverOff: plan.levels.flatMap(({ name, body }): readonly CoverOff[] => {
      const girth = read[`${name}Girth`];
      const over = girth === undefined ? 0 : girth - body.girth.value;
      return Math.abs(over) > onTarget ? [{ level: name, over }] : [];
    }),
  };
}

function lengthsOf(levels: ByLevel<LevelPosterior>, level: LevelName) {
  const { girth, frontArc, bare } = levels[level];
  const bareFront = bare.leftFront + bare.rightFront;
  return {
    girth: girth.value,
    front: frontArc.value,
    bareGirth: bareFront + bare.leftBack + bare.rightBack,
    bareFront,
  };
}

function pressedReading({ girth, bare }: LevelPosterior, read: number | undefined): readonly PressedReading[] {
  if (read === undefined) return [];
  const added = girth.value - bare.leftFront - bare.rightFront - bare.leftBack - bare.rightBack;
  return [{ added, lost: girth.value - read }];
}

/** The last reading of each place over the cover (mm), since a piece was pinned or taken off beneath it. */
function readOverCover({ work, unit }: Pick<Fitting, "work" | "unit">): {
  readonly [name in MeasurementName]?: number;
} {
  const changed = work.findLastIndex(({ did }) => did === "pinned" || did === "unpinned" || did === "trimmed");
  return Object.fromEntries(
    work.slice(changed + 1).flatMap((entry) => {
      if (entry.did !== "measured" || entry.over !== "cover") return [];
      return Object.entries(entry.readings).flatMap(([name, typed]) => {
        const length = entryLength(typed, unit);
        return length.ok ? [[name, length.value] as const] : [];
      });
    }),
  );
}
