/** A point of a profile (mm): how far along its straight line, and how far out of it. */
export interface ProfilePoint {
  readonly x: number;
  readonly out: number;
}

/**
 * How long a taut tape is from the first to the last point of a profile that it lies over (mm): the length of the outer hull. Points
 * come in the order of the way; a tape bridges every hollow. No point and one point have no length.
 */
export function tautPath(profile: readonly ProfilePoint[]): number {
  const touched: ProfilePoint[] = [];
  for (const point of profile) {
    while (touched.length >= 2 && !turnsOut(touched[touched.length - 2], touched[touched.length - 1], point))
      touched.pop();
    touched.push(point);
  }
  return touched.slice(1).reduce((sum, { x, out }, i) => {
    const before = touched[i] as ProfilePoint;
    return sum + Math.hypot(x - before.x, out - before.out);
  }, 0);
}

/** Whether the way bends over the middle point, so that the tape touches it. */
const turnsOut = (from: ProfilePoint | undefined, mid: ProfilePoint | undefined, to: ProfilePoint): boolean =>
  from !== undefined &&
  mid !== undefined &&
  (mid.x - from.x) * (to.out - mid.out) - (mid.out - from.out) * (to.x - mid.x) < 0;
