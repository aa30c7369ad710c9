import type { Piece } from "../../core/padding/piece";
import type { LayeredSection, LayerOutline } from "./layeredSection";
import { circle, segment } from "./pathText";
import type { FacingStrip } from "./pieceOnFigure";
import { at, between, label, type Label, mark, type Mark, type PicturePoint } from "./scene";

/**
 * The numbers of pieces on a figure, in a column on each side of it, each with a leader to a place on its own piece's
 * edge that lies clear of the other pieces' edges.
 */
interface Placed {
  readonly piece: Piece;
  readonly strips: readonly FacingStrip[];
}

interface Columns {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function columnCallouts(
  placed: readonly Placed[],
  columns: Columns,
  textSize: number,
): { readonly marks: readonly Mark[]; readonly labels: readonly Label[] } {
  const seen = placed.filter(({ strips }) => strips.length > 0);
  const dots = seen.map((item) => ({ order: item.piece.order, dot: clearest(item, seen) }));
  const callouts = (["left", "right"] as const).flatMap((side) => {
    const own = dots.filter(({ dot }) => dot.x < 0 === (side === "left")).toSorted((a, b) => a.dot.y - b.dot.y);
    // Many numbers on one side come closer together before they leave the column.
    const gap = Math.min(textSize * 1.3, (columns.bottom - columns.top) / Math.max(1, own.length - 1));
    const heights = spreadOut(
      own.map(({ dot }) => dot.y),
      gap,
      columns.top,
      columns.bottom,
    );
    return own.map(({ order, dot }, i) => ({ order, dot, end: at(columns[side], heights[i] ?? dot.y) }));
  });
  return {
    marks: [
      mark(
        "leader",
        ...callouts.map(({ dot, end, order }) =>
          segment(at(end.x - Math.sign(end.x) * textSize * (order > 9 ? 1.05 : 0.75), end.y), dot),
        ),
      ),
      mark("dot", ...callouts.map(({ dot }) => circle(dot, textSize * 0.13))),
    ],
    labels: callouts.map(({ end, order }) => label("strong", end, String(order))),
  };
}

/**
 * A place just inside the piece's edge, as far as can be from the edges of the others, up to what a dot needs; among equals
 * the one nearest a third of the way down.
 */
function clearest(item: Placed, all: readonly Placed[]): PicturePoint {
  const others = all
    .filter(({ piece }) => piece.order !== item.piece.order)
    .flatMap(({ strips }) => strips.flatMap(edgePoints));
  const largest = item.strips.reduce((found, strip) => (strip.length > found.length ? strip : found));
  const candidates = largest.slice(1, -1).flatMap(({ left, right }, i) => {
    const inset = Math.min(0.5, 6 / Math.max(6, right.x - left.x));
    const fromThird = Math.abs((i + 1) / largest.length - 1 / 3);
    return [between(left, right, inset), between(right, left, inset)].map((place) => ({ place, fromThird }));
  });
  const best = candidates.reduce<{ readonly place: PicturePoint; readonly score: number } | null>(
    (found, { place, fromThird }) => {
      const room = others.reduce(
        (least, other) => Math.min(least, (other.x - place.x) ** 2 + (other.y - place.y) ** 2),
        enoughRoom ** 2,
      );
      const score = Math.sqrt(room) - fromThird * 10;
      return found === null || score > found.score ? { place, score } : found;
    },
    null,
  );
  return best?.place ?? largest[0]?.left ?? at(0, 0);
}

/** A dot this far from another piece's edge is plainly not on it (mm). */
const enoughRoom = 16;

const edgePoints = (strip: FacingStrip): readonly PicturePoint[] => strip.flatMap(({ left, right }) => [left, right]);

/** Heights at least `gap` apart, each as near as it can be to its wish, in the same order, kept between the limits. */
export function spreadOut(wishes: readonly number[], gap: number, least: number, most: number): readonly number[] {
  const down: number[] = [];
  for (const wish of wishes) down.push(Math.max(wish, least, (down.at(-1) ?? Number.NEGATIVE_INFINITY) + gap));
  const up: number[] = [];
  for (const place of down.toReversed()) up.push(Math.min(place, most, (up.at(-1) ?? Number.POSITIVE_INFINITY) - gap));
  return up.toReversed();
}

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

/**
 * Where to hang numbers round a section so that their leaders run straight outwards and do not crowd: each asks for a
 * direction among those it may have, and the choosiest choose first. Angles in radians in the picture's own sense.
 */
interface CalloutWish {
  readonly allowed: readonly number[];
}

/** One direction for each wish, in their order; a wish without any allowed direction gets null. */
function calloutDirections(wishes: readonly CalloutWish[], taken: readonly number[]): readonly (number | null)[] {
  const chosen: (number | null)[] = wishes.map(() => null);
  const used = [...taken];
  const order = wishes.map((_, i) => i).sort((a, b) => breadthOf(wishes[a]) - breadthOf(wishes[b]) || a - b);
  for (const i of order) {
    const allowed = wishes[i]?.allowed ?? [];
    const best = allowed.reduce<{ angle: number; room: number } | null>((found, angle) => {
      const room = Math.min(enoughTurn, ...used.map((other) => turnBetween(angle, other)));
      return found === null || room > found.room ? { angle, room } : found;
    }, null);
    if (best === null) continue;
    chosen[i] = best.angle;
    used.push(best.angle);
  }
  return chosen;
}

/** Numbers this far apart never touch (radians, about 11 degrees): beyond it the first allowed direction is best. */
const enoughTurn = 0.19;

const breadthOf = (wish: CalloutWish | undefined): number => wish?.allowed.length ?? 0;

const turnBetween = (a: number, b: number): number => {
  const turn = Math.abs(a - b) % (2 * Math.PI);
  return Math.min(turn, 2 * Math.PI - turn);
};
