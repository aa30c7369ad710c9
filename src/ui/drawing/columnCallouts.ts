import type { Piece } from "../../core/padding/piece";
import { circle, segment } from "./pathText";
import { at, between, type PicturePoint } from "./picturePoint";
import type { FacingStrip } from "./pieceOnFigure";
import { label, mark, type Label, type Mark } from "./scene";

/**
 * The numbers of pieces on a figure, in a column on each side of it, each with a leader to a place on its own piece's
 * edge that lies clear of the other pieces' edges.
 */
export interface Placed {
  readonly piece: Piece;
  readonly strips: readonly FacingStrip[];
}

export interface Columns {
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
