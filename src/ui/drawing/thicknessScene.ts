import type { Piece } from "../../core/padding/piece";
import type { PlannedLevel } from "../../core/plan/plan";
import { pictureWords } from "../../text/pictures";
import { contourRings } from "./contourRings";
import { type DepthBand, depthBands } from "./depthBands";
import { figureExtent, figureFrame, levelLines, viewLabels } from "./figureScene";
import { facingStretch, type FigureView, viewWords } from "./figureView";
import { formFigure, formMarks } from "./formFigure";
import type { LengthWriter } from "./lengthWriter";
import { depthAt, paddedSurface, type PaddedRing, type PaddedSurface, placeOnPage, silhouette } from "./paddedSurface";
import { closedPath, segment } from "./pathText";
import { at, type PicturePoint } from "./picturePoint";
import { label, mark, type Frame, type Label, type Mark, type Scene } from "./scene";
import { torsoCurves } from "./torsoCurves";

/**
 * Where the batting goes and how deep: all pieces together as bands of depth on the form, each deeper band darker and
 * hatched more closely, with a key underneath.
 */
export interface ThicknessPicture {
  readonly levels: readonly PlannedLevel[];
  readonly pieces: readonly Piece[];
  readonly view: FigureView;
  readonly lengths: LengthWriter;
}

export function thicknessScene({ levels, pieces, view, lengths }: ThicknessPicture): Scene {
  const sectionAt = torsoCurves(levels, "formSection");
  const { top, bottom } = figureExtent(levels, pieces);
  const bare = paddedSurface(sectionAt, [], top, bottom);
  const padded = paddedSurface(sectionAt, pieces, top, bottom);
  const field = padded.map((ring) => facingValues(ring, view));
  const bands = depthBands(Math.max(0, ...padded.flatMap((ring) => [...ring.thickness])), lengths);
  const { frame: figure } = figureFrame(view, [bare, padded], bottom);
  const textSize = figure.width / 25;
  const frame = { ...figure, height: figure.height + textSize * 3.2 };
  const onPage = pageOf(padded, view);
  const shades = bands.map(({ from }, i) =>
    mark(shadeRoles[i] ?? "shade4", ...contourRings(field, from).map((ring) => closedPath(ring.map(onPage)))),
  );
  const key = depthKey(bands, frame, textSize, lengths);
  return {
    title: `How thick the batting is, ${viewWords[view]}`,
    description: `All pieces together ${viewWords[view]}: ${deepestPlace(padded, view, lengths)}`,
    frame,
    textSize,
    marks: [
      ...formMarks(formFigure(silhouette(bare, view), view)),
      ...shades,
      ...levelLines(levels, padded, view),
      mark("hatch", ...bands.map(({ from }, i) => bandHatch(field, from, i, onPage))),
      ...key.marks,
    ],
    labels: [...viewLabels(levels, view, figure, textSize), ...key.labels],
  };
}

const shadeRoles = ["shade1", "shade2", "shade3", "shade4"] as const;
const columns = 49;

/** The depth across the part of a ring that faces the reader, at evenly spaced places along the bare surface. */
function facingValues(ring: PaddedRing, view: FigureView): Float64Array {
  const { from, to } = facingStretch(view, ring.outline.quarters);
  return Float64Array.from({ length: columns }, (_, i) => depthAt(ring, from + ((to - from) * i) / (columns - 1)));
}

/** From a place in the grid (column, row) to the page. */
const pageOf =
  (surface: PaddedSurface, view: FigureView) =>
  ({ x, y }: PicturePoint): PicturePoint => {
    const upper = surface[Math.floor(y)] ?? surface[0];
    const lower = surface[Math.ceil(y)] ?? upper;
    if (upper === undefined || lower === undefined) return at(0, 0);
    const drop = upper.drop + (lower.drop - upper.drop) * (y - Math.floor(y));
    const ring = y - Math.floor(y) < 0.5 ? upper : lower;
    const { from, to } = facingStretch(view, ring.outline.quarters);
    return placeOnPage(surface, view, from + ((to - from) * x) / (columns - 1), drop);
  };

/** Level strokes across a band, twice as close for every deeper one; the deepest is crossed by upright strokes too. */
function bandHatch(
  field: readonly Float64Array[],
  from: number,
  band: number,
  onPage: (place: PicturePoint) => PicturePoint,
): string {
  if (band === 0) return "";
  if (band === 3) return crossHatch(field, from, onPage);
  const [every, start] = band === 1 ? [2, 0] : [2, 1];
  return field
    .flatMap((values, row) => (row % every === start ? runsAbove(values, from).map((run) => ({ ...run, row })) : []))
    .map(({ left, right, row }) => segment(onPage(at(left, row)), onPage(at(right, row))))
    .join("");
}

function crossHatch(
  field: readonly Float64Array[],
  from: number,
  onPage: (place: PicturePoint) => PicturePoint,
): string {
  return Array.from({ length: Math.ceil(columns / 2) }, (_, i) => i * 2)
    .flatMap((column) =>
      runsAbove(
        Float64Array.from(field, (values) => values[column] ?? 0),
        from,
      ).map((run) => ({ ...run, column })),
    )
    .map(({ left, right, column }) => segment(onPage(at(column, left)), onPage(at(column, right))))
    .join("");
}

/** Stretches of a row on which the depth is at least the threshold, ends found between the samples. */
function runsAbove(
  values: Float64Array,
  threshold: number,
): readonly { readonly left: number; readonly right: number }[] {
  const runs: { left: number; right: number }[] = [];
  let left: number | null = null;
  values.forEach((value, i) => {
    const before = values[i - 1];
    const crossing = before === undefined ? i : i - 1 + (threshold - before) / (value - before);
    if (value >= threshold && left === null) left = crossing;
    if (value < threshold && left !== null) {
      runs.push({ left, right: crossing });
      left = null;
    }
  });
  return left === null ? runs : [...runs, { left, right: values.length - 1 }];
}

function depthKey(
  bands: readonly DepthBand[],
  frame: Frame,
  size: number,
  lengths: LengthWriter,
): { readonly marks: readonly Mark[]; readonly labels: readonly Label[] } {
  const swatch = size * 1.5;
  const step = frame.width / bandsAcross;
  const places = bands.map((_, i) =>
    at(frame.x + size * 0.4 + (i % bandsAcross) * step, frame.y + frame.height - size * (i < bandsAcross ? 4.2 : 2.1)),
  );
  const square = ({ x, y }: PicturePoint): string =>
    closedPath([at(x, y), at(x + swatch, y), at(x + swatch, y + swatch), at(x, y + swatch)]);
  const strokes = places.map((place, i) => swatchHatch(place, swatch, i)).join("");
  return {
    marks: [...places.map((place, i) => mark(shadeRoles[i] ?? "shade4", square(place))), mark("hatch", strokes)],
    labels: bands.map(({ from, to }, i) => {
      const place = places[i] ?? at(0, 0);
      return label(
        "name",
        at(place.x + swatch + size * 0.4, place.y + swatch / 2),
        pictureWords.depth(i === 0 ? null : lengths.writeFine(from), to === null ? null : lengths.writeFine(to)),
        "start",
      );
    }),
  };
}

const bandsAcross = 2;

function swatchHatch({ x, y }: PicturePoint, size: number, band: number): string {
  const count = [0, 2, 5, 5][band] ?? 0;
  const at1 = (i: number): number => (size * (i + 1)) / (count + 1);
  const level = Array.from({ length: count }, (_, i) => segment(at(x, y + at1(i)), at(x + size, y + at1(i))));
  const upright =
    band < 3 ? [] : Array.from({ length: count }, (_, i) => segment(at(x + at1(i), y), at(x + at1(i), y + size)));
  return [...level, ...upright].join("");
}

function deepestPlace(surface: PaddedSurface, view: FigureView, lengths: LengthWriter): string {
  const deepest = surface
    .map((ring) => ({ drop: ring.drop, depth: Math.max(...facingValues(ring, view)) }))
    .reduce((found, ring) => (ring.depth > found.depth ? ring : found), { drop: 0, depth: 0 });
  return deepest.depth === 0
    ? "no batting shows from here."
    : `thickest ${lengths.write(deepest.drop)} below the nape, about ${lengths.writeFine(deepest.depth)}.`;
}
