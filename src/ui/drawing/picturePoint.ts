/** A place in a picture, in millimetres of the thing drawn: x to the right of the page, y down the page. */
export interface PicturePoint {
  readonly x: number;
  readonly y: number;
}

export const at = (x: number, y: number): PicturePoint => ({ x, y });

export const mirrored = (points: readonly PicturePoint[]): readonly PicturePoint[] =>
  points.map(({ x, y }) => at(-x, y)).reverse();

export const between = (from: PicturePoint, to: PicturePoint, share: number): PicturePoint =>
  at(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);

/** The length of an open line through the points; none or one point has no length. */
export const lineLength = (points: readonly PicturePoint[]): number =>
  points.reduce((sum, point, i) => {
    const before = points[i - 1];
    return before === undefined ? 0 : sum + Math.hypot(point.x - before.x, point.y - before.y);
  }, 0);
