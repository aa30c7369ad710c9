import type { FileForm } from "./planCheckerFile";
import { bareOutline } from "./planCheckerOutline";
import type { TruePoint, TrueShape } from "./trueShapes";

/** Directions in which outlines are compared. */
const directions = 72;

/**
 * How far the form's outline that a plan assumes lies from the true hull at the same depth (mm, root mean square over all
 * directions), laid on it as well as it can be by moving it forward or back: where its middle lies is a convention.
 */
export function outlineMiss(assumed: FileForm, form: TrueShape, depth: number): number {
  const { ring } = form.sectionAt(depth);
  const angles = Array.from({ length: directions }, (_, i) => (2 * Math.PI * i) / directions);
  const [ours, truth] = [bareOutline(assumed).points, ring].map((points) =>
    angles.map((angle) => reach(points, angle)),
  );
  const gaps = angles.map((_, i) => (ours?.[i] as number) - (truth?.[i] as number));
  const moved = (direction: (angle: number) => number) =>
    (2 / directions) * gaps.reduce((sum, gap, i) => sum + gap * direction(angles[i] as number), 0);
  const [left, front] = [moved(Math.cos), moved(Math.sin)];
  const rest = gaps.map((gap, i) => gap - left * Math.cos(angles[i] as number) - front * Math.sin(angles[i] as number));
  return Math.sqrt(rest.reduce((sum, gap) => sum + gap * gap, 0) / directions);
}

const reach = (points: readonly TruePoint[], angle: number): number =>
  points.reduce(
    (most, { x, y }) => Math.max(most, x * Math.cos(angle) + y * Math.sin(angle)),
    Number.NEGATIVE_INFINITY,
  );
