import { at, between, type PicturePoint } from "./scene";

/**
 * Path data for SVG. Numbers are written to a tenth of a millimetre: finer than any printer's line, and short.
 * No points give no text, so that an empty mark draws nothing.
 */

export const number = (value: number): string => {
  const rounded = Math.round(value * 10) / 10;
  return String(Object.is(rounded, -0) ? 0 : rounded);
};

const pair = ({ x, y }: PicturePoint): string => `${number(x)} ${number(y)}`;

export const openPath = (points: readonly PicturePoint[]): string =>
  points.length === 0 ? "" : `M${points.map(pair).join("L")}`;

export const closedPath = (points: readonly PicturePoint[]): string =>
  points.length === 0 ? "" : `${openPath(points)}Z`;

export const segment = (from: PicturePoint, to: PicturePoint): string => `M${pair(from)}L${pair(to)}`;

export const circle = (centre: PicturePoint, radius: number): string => {
  const r = number(radius);
  const across = number(radius * 2);
  return `M${number(centre.x - radius)} ${number(centre.y)}a${r} ${r} 0 1 0 ${across} 0a${r} ${r} 0 1 0 -${across} 0Z`;
};

/**
 * A smooth curve through the points: each stretch a cubic whose ends point along the chord of the neighbours
 * (Catmull and Rom 1974, uniform). Two points give a straight line; one gives nothing to see.
 */
export const smoothPath = (points: readonly PicturePoint[]): string => {
  const [first] = points;
  if (first === undefined) return "";
  const stretches = points.slice(1).map((to, i) => {
    const from = points[i] ?? to;
    const before = points[i - 1] ?? from;
    const after = points[i + 2] ?? to;
    const handleFrom = at(from.x + (to.x - before.x) / 6, from.y + (to.y - before.y) / 6);
    const handleTo = at(to.x - (after.x - from.x) / 6, to.y - (after.y - from.y) / 6);
    return `C${pair(handleFrom)} ${pair(handleTo)} ${pair(to)}`;
  });
  return `M${pair(first)}${stretches.join("")}`;
};

/** Smooth runs joined end to end with a corner at every join, closed at the last. */
export const smoothRuns = (runs: readonly (readonly PicturePoint[])[]): string =>
  runs.length === 0
    ? ""
    : `${runs
        .map(smoothPath)
        .filter((text) => text !== "")
        .map((text, i) => (i === 0 ? text : `L${text.slice(1)}`))
        .join("")}Z`;

/** A line with a small arrowhead at its end, all strokes, for leaders and dimensions. */
export const arrow = (from: PicturePoint, to: PicturePoint, head: number): string => {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length === 0) return "";
  const back = between(to, from, Math.min(1, head / length));
  const across = at(((to.y - from.y) / length) * head * 0.4, (-(to.x - from.x) / length) * head * 0.4);
  const wings = [at(back.x + across.x, back.y + across.y), to, at(back.x - across.x, back.y - across.y)];
  return segment(from, to) + openPath(wings);
};

/** A dimension line: arrowheads at both ends. */
export const dimension = (from: PicturePoint, to: PicturePoint, head: number): string =>
  arrow(between(from, to, 0.5), to, head) + arrow(between(from, to, 0.5), from, head);
