import { contourRings } from "./contourRings";
import { at, type PicturePoint } from "./picturePoint";

/**
 * The line a given distance inside a closed outline: every place on it lies just that far from the nearest edge. An
 * outline too narrow for the distance gives no line, and one with a waist may give several. The line is found on a grid of
 * about sixty steps along the longer side, finer than a pencil line at the size it is drawn.
 */
export function insetRings(outline: readonly PicturePoint[], distance: number): readonly (readonly PicturePoint[])[] {
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const step = Math.max(width, height) / 60;
  if (!(step > 0)) return [];
  const values = Array.from({ length: Math.ceil(height / step) + 1 }, (_, row) =>
    Float64Array.from({ length: Math.ceil(width / step) + 1 }, (_unused, column) =>
      depthInside(outline, at(left + column * step, top + row * step)),
    ),
  );
  return contourRings(values, distance).map((ring) => ring.map(({ x, y }) => at(left + x * step, top + y * step)));
}

/** How far a place lies inside the outline, negative outside. */
function depthInside(outline: readonly PicturePoint[], place: PicturePoint): number {
  let inside = false;
  let nearest = Number.POSITIVE_INFINITY;
  outline.forEach((to, i) => {
    const from = outline.at(i - 1) ?? to;
    if (
      from.y > place.y !== to.y > place.y &&
      place.x < from.x + ((place.y - from.y) / (to.y - from.y)) * (to.x - from.x)
    )
      inside = !inside;
    const [stepX, stepY] = [to.x - from.x, to.y - from.y];
    const square = stepX * stepX + stepY * stepY;
    const share =
      square === 0 ? 0 : Math.min(1, Math.max(0, ((place.x - from.x) * stepX + (place.y - from.y) * stepY) / square));
    nearest = Math.min(nearest, (place.x - from.x - share * stepX) ** 2 + (place.y - from.y - share * stepY) ** 2);
  });
  return inside ? Math.sqrt(nearest) : -Math.sqrt(nearest);
}
