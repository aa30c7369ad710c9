import type { PaddedSection } from "../../../core/surface/paddedSection";
import type { FigureView } from "../figureView";
import { silhouette } from "../silhouette";
import type { TorsoShape } from "./torsoShape";

/** The torso with everything on it: as wide, and as deep, as its silhouette is now. */
export function paddedShape(shape: TorsoShape, padded: readonly PaddedSection[], view: FigureView): TorsoShape {
  const { left, right } = silhouette(padded, view);
  const edge = (points: readonly { readonly x: number; readonly y: number }[], depth: number, bare: number) => {
    const ring = points.findIndex(({ y }) => y >= depth);
    return ring === -1 ? bare : Math.max(bare, Math.abs(points[ring]?.x ?? 0));
  };
  return view === "side"
    ? {
        ...shape,
        front: (depth) => edge(left, depth, shape.front(depth)),
        back: (depth) => edge(right, depth, shape.back(depth)),
      }
    : { ...shape, half: (depth) => edge(right, depth, shape.half(depth)) };
}
