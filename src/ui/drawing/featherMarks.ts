import type { Layer } from "../../core/padding/layer";
import { insetRings } from "./insetRings";
import { closedPath, openPath, segment } from "./pathText";
import { at, between, type PicturePoint } from "./picturePoint";
import { mark, type Mark } from "./scene";

/** The band along the edge of a strip or panel that is feathered; a wrap has none where its ends meet, a square edge none at all. */
export function featherMarks(layer: Layer, outline: readonly PicturePoint[]): readonly Mark[] {
  if (layer.feather === 0) return [];
  if (!layer.wrap) {
    const ticks = ticksInward(evenSteps(outline, layer.feather / 2.5), layer.feather * 0.3);
    return [mark("feather", ...insetRings(outline, layer.feather).map(closedPath)), mark("hatch", ticks)];
  }
  const bottom = Math.max(...outline.map(({ y }) => y));
  const edge = (y: number): readonly PicturePoint[] => {
    const half = outline.slice(0, outline.length / 2);
    const below = half.findIndex((point) => point.y >= y);
    const [from, to] = [half[Math.max(0, below - 1)] ?? at(0, y), half[below] ?? at(0, y)];
    const { x } = between(from, to, to.y === from.y ? 0 : (y - from.y) / (to.y - from.y));
    return [at(-x, y), at(x, y)];
  };
  return [mark("feather", openPath(edge(layer.feather)), openPath(edge(bottom - layer.feather)))];
}

/** Places a step apart along a closed outline, the same way round. */
function evenSteps(outline: readonly PicturePoint[], step: number): readonly PicturePoint[] {
  const ring = [...outline, ...outline.slice(0, 1)];
  let carry = 0;
  return ring.slice(1).flatMap((to, i) => {
    const from = ring[i] ?? to;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const count = Math.floor((carry + length) / step);
    const places = Array.from({ length: count }, (_, k) => between(from, to, ((k + 1) * step - carry) / length));
    carry += length - count * step;
    return places;
  });
}

/** Short strokes from the edge inward, the sign for batting pulled thin. The ring runs with the piece on its right. */
export function ticksInward(ring: readonly PicturePoint[], reach: number): string {
  return ring
    .slice(1)
    .map((to, i) => {
      const from = ring[i] ?? to;
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      const [x, y] = length === 0 ? [0, 0] : [-(to.y - from.y) / length, (to.x - from.x) / length];
      return segment(to, at(to.x + x * reach, to.y + y * reach));
    })
    .join("");
}
