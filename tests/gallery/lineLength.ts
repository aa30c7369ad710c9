import type { PicturePoint } from "../../src/ui/drawing/scene";

/** The length of an open line through the points; none or one point has no length. */
export const lineLength = (points: readonly PicturePoint[]): number =>
  points.reduce((sum, point, i) => {
    const before = points[i - 1];
    return before === undefined ? 0 : sum + Math.hypot(point.x - before.x, point.y - before.y);
  }, 0);
