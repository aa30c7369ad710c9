/**
 * How much of what the batting adds to a reading a pulled cover takes off again, as a share: cloth under tension presses with
 * tension over radius, and batting gives way by a share of its thickness. Learned from readings over the cover alone; these never
 * teach how thick a layer is.
 */
export interface CoverPressing {
  readonly share: number;
  readonly standardDeviation: number;
}

/** What batting adds to a reading over the padding (mm), and what the cover took off there (mm). */
export interface PressedReading {
  readonly added: number;
  readonly lost: number;
}

/** Some millimeters over twenty of batting. A judgement: no cover was pulled over a padded form for it. */
export const usualPressing: CoverPressing = { share: 0.04, standardDeviation: 0.03 };

/** One standard deviation of the difference of two readings of one place by one person (mm). A judgement. */
const differenceDeviation = 4.5;

/** A slip of the reader says nothing of the cover: four standard deviations away from what is usual. */
const isLikely = ({ added, lost }: PressedReading): boolean =>
  Math.abs(lost - usualPressing.share * added) <=
  4 * Math.hypot(differenceDeviation, usualPressing.standardDeviation * added);

/** No cloth that is pulled on by hand takes off more than a quarter of the batting. A judgement. */
const mostPressing = 0.25;

/** The most probable share by least squares with what is usual before any reading; never below nothing, nor above what a cover can do. */
export function coverPressing(readings: readonly PressedReading[]): CoverPressing {
  const likely = readings.filter(isLikely);
  const prior = 1 / usualPressing.standardDeviation ** 2;
  const weight = 1 / differenceDeviation ** 2;
  const known = prior + likely.reduce((sum, { added }) => sum + weight * added * added, 0);
  const told = prior * usualPressing.share + likely.reduce((sum, { added, lost }) => sum + weight * added * lost, 0);
  return { share: Math.min(mostPressing, Math.max(0, told / known)), standardDeviation: 1 / Math.sqrt(known) };
}
