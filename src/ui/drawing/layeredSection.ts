import type { Section } from "../../core/body/section";
import type { Piece } from "../../core/padding/piece";
import { paddedSection, type PaddedSection, withFirst } from "../../core/surface/paddedSection";
import { closedPath, segment } from "./pathText";
import { at, mark, type Mark, type PicturePoint } from "./scene";

/**
 * A form's section at one depth with its padding, piece upon piece, in the order of pinning. Places are in the level plane
 * (x to the wearer's left, y to the front), which is also how the picture lies on the page: seen from above, front towards
 * the reader.
 */
export interface LayerOutline {
  readonly piece: Piece;
  /** Thickness of this piece alone at each point of the bare outline. */
  readonly own: Float64Array;
  readonly inner: readonly PicturePoint[];
  readonly outer: readonly PicturePoint[];
}

export interface LayeredSection {
  readonly form: readonly PicturePoint[];
  readonly layers: readonly LayerOutline[];
  /** The outermost surface: the form itself where nothing is pinned. */
  readonly surface: readonly PicturePoint[];
}

/** Points along each half quarter of a section: 192 in all, so that no chord leaves the curve by 0.1 mm. */
const pointsPerEighth = 24;

/** A bare section as points of the picture. */
export const barePoints = (section: Section, depth: number): readonly PicturePoint[] =>
  picturePoints(paddedSection(section, depth, [], pointsPerEighth));

const picturePoints = ({ points }: PaddedSection): readonly PicturePoint[] =>
  Array.from({ length: points.length / 2 }, (_, i) => at(points[2 * i] ?? 0, points[2 * i + 1] ?? 0));

export function layeredSection(section: Section, depth: number, pieces: readonly Piece[]): LayeredSection {
  const padded = paddedSection(section, depth, pieces, pointsPerEighth);
  const layers = pieces.flatMap((piece, i): readonly LayerOutline[] => {
    const own = padded.added[i] ?? new Float64Array();
    if (!own.some((thickness) => thickness > 0)) return [];
    const [inner, outer] = [i, i + 1].map((count) => picturePoints(withFirst(padded, count)));
    return inner === undefined || outer === undefined ? [] : [{ piece, own, inner, outer }];
  });
  return { form: picturePoints(withFirst(padded, 0)), layers, surface: picturePoints(padded) };
}

/** Runs of neighbouring points at which a piece has some thickness, each as a list of indices; one whole turn is one run. */
function coveredRuns(own: Float64Array): readonly (readonly number[])[] {
  const count = own.length;
  const covered = (i: number): boolean => (own[(i + count) % count] ?? 0) > thinnestDrawn;
  const starts = Array.from({ length: count }, (_, i) => i).filter((i) => covered(i) && !covered(i - 1));
  if (starts.length === 0) return covered(0) ? [Array.from({ length: count + 1 }, (_, i) => i % count)] : [];
  return starts.map((start) => {
    const run = [(start - 1 + count) % count];
    for (let i = start; covered(i) && run.length <= count; i++) run.push(i % count);
    return [...run, ((run.at(-1) ?? 0) + 1) % count];
  });
}

/** Batting thinner than this is not drawn: half the width of a printed line at the scale of the picture (mm). */
const thinnestDrawn = 0.05;

/**
 * The batting at one level: a band for each piece between the surface it lies on and its own, in two tints that take
 * turns so that the layers can be counted. The piece at hand is hatched as well.
 */
export function bandMarks({ layers }: LayeredSection, now: number | null): readonly Mark[] {
  const bands = layers.map((layer) => ({
    layer,
    path: coveredRuns(layer.own)
      .map((run) => bandPath(layer, run))
      .join(""),
  }));
  const atHand = bands.filter(({ layer }) => layer.piece.order === now);
  const others = bands.filter(({ layer }) => layer.piece.order !== now);
  return [
    mark("layer", ...others.filter((_, i) => i % 2 === 0).map(({ path }) => path)),
    mark("layerNext", ...others.filter((_, i) => i % 2 === 1).map(({ path }) => path)),
    mark("layerNow", ...atHand.map(({ path }) => path)),
    mark("hatchNow", ...atHand.flatMap(({ layer }) => coveredRuns(layer.own).map((run) => bandHatch(layer, run)))),
  ];
}

const along = (points: readonly PicturePoint[], run: readonly number[]): readonly PicturePoint[] =>
  run.flatMap((i) => points[i] ?? []);

const bandPath = ({ inner, outer }: LayerOutline, run: readonly number[]): string =>
  closedPath([...along(outer, run), ...along(inner, run).toReversed()]);

/** Short slanted strokes across a band, about a stroke's length apart. */
function bandHatch({ inner, outer }: LayerOutline, run: readonly number[]): string {
  let travelled = hatchStep;
  return run
    .map((i, step) => {
      const [from, ahead, to] = [inner[i], inner[run[step + 1] ?? i], outer[run[step + 2] ?? run[step + 1] ?? i]];
      if (from === undefined || ahead === undefined || to === undefined) return "";
      const due = travelled >= hatchStep;
      travelled = (due ? 0 : travelled) + Math.hypot(ahead.x - from.x, ahead.y - from.y);
      return due ? segment(from, to) : "";
    })
    .join("");
}

/** Space between the strokes of a hatch, in millimetres of the form. */
const hatchStep = 6;
