import { calloutDirections } from "./callouts";
import type { LayeredSection, LayerOutline } from "./layerOutlines";
import { circle, segment } from "./pathText";
import { at, between, type PicturePoint } from "./picturePoint";
import { label, mark, type Label, type Mark } from "./scene";

/** The number of each piece outside the section, with a straight leader to a dot on its batting. */
export function numberCallouts(
  { layers }: LayeredSection,
  body: readonly PicturePoint[],
  textSize: number,
  now: number | null,
): { readonly marks: readonly Mark[]; readonly labels: readonly Label[] } {
  const outside = [...body, ...(layers.at(-1)?.outer ?? [])];
  const wishes = layers.map((layer) => thickPart(layer));
  const directions = calloutDirections(
    wishes.map((places) => ({ allowed: places.map(directionOf) })),
    takenDirections,
  );
  const placed = directions.flatMap((direction, i) => {
    const layer = layers[i];
    const dot = wishes[i]?.find((place) => directionOf(place) === direction);
    if (direction === null || layer === undefined || dot === undefined) return [];
    const radius = outermost(outside, direction) + textSize * 1.15;
    const end = at(Math.cos(direction) * radius, Math.sin(direction) * radius);
    return [{ dot, end, order: layer.piece.order }];
  });
  return {
    marks: [
      mark(
        "leader",
        ...placed.map(({ dot, end }) => segment(dot, between(dot, end, 1 - (textSize * 0.62) / distance(dot, end)))),
      ),
      mark("dot", ...placed.map(({ dot }) => circle(dot, textSize * 0.11))),
    ],
    labels: placed.map(({ end, order }) => label(order === now ? "strong" : "number", end, String(order))),
  };
}

const directionOf = ({ x, y }: PicturePoint): number => Math.atan2(y, x);

/** The words FRONT, BACK, LEFT and RIGHT stand here already. */
const takenDirections = [0, Math.PI, -Math.PI / 2, Math.PI / 2];

/** The middles of a layer's band where it is at least two thirds of its full thickness, the middle of the piece first. */
function thickPart({ own, inner, outer }: LayerOutline): readonly PicturePoint[] {
  const full = own.reduce((most, value) => Math.max(most, value), 0);
  const places = [...own].flatMap((value, i) => {
    const [from, to] = [inner[i], outer[i]];
    return from !== undefined && to !== undefined && value > (full * 2) / 3 ? [between(from, to, 0.5)] : [];
  });
  const sum = places.reduce((total, place) => at(total.x + place.x, total.y + place.y), at(0, 0));
  const toMiddle = (place: PicturePoint): number => distance(place, at(sum.x / places.length, sum.y / places.length));
  return places.toSorted((a, b) => toMiddle(a) - toMiddle(b));
}

const distance = (a: PicturePoint, b: PicturePoint): number => Math.hypot(a.x - b.x, a.y - b.y);

/** How far the picture reaches in about one direction. */
function outermost(points: readonly PicturePoint[], direction: number): number {
  const [x, y] = [Math.cos(direction), Math.sin(direction)];
  return points.reduce((most, point) => {
    const ahead = point.x * x + point.y * y;
    const aside = Math.abs(point.x * y - point.y * x);
    return ahead > 0 && aside < ahead * 0.12 ? Math.max(most, ahead) : most;
  }, 0);
}
