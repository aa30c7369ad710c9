import type { Measurements } from "./measurements";
import type { LevelName } from "./vocabulary";

/**
 * How far a level lies straight below the nape (mm), if it was read vertically: from the nape down, or as the difference
 * of two heights above one floor. A height means nothing without the nape's.
 */
export function belowNape(measurements: Measurements, level: LevelName): number | undefined {
  return measurements[`${level}BelowNape`] ?? belowNapeByHeights(measurements, level);
}

export function belowNapeByHeights(measurements: Measurements, level: LevelName): number | undefined {
  const [nape, height] = [measurements.napeHeight, measurements[`${level}Height`]];
  return nape === undefined || height === undefined ? undefined : nape - height;
}
