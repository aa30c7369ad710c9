import { type SectionAt, torsoCurve } from "../../core/body/torsoCurve";
import { type Outline, quarterLengths, sectionOutline } from "../../core/geometry/outline";
import { alongSurface, piecesThickness } from "../../core/padding/layerThickness";
import { outermostLayer, type Piece } from "../../core/padding/piece";
import type { PlannedLevel } from "../../core/plan/plan";
import { mm } from "../../core/units";
import { acrossPage, facingStretch, type FigureView } from "./figureView";
import { smoothRuns } from "./pathText";
import { at, type PicturePoint } from "./scene";

/**
 * The form with its padding as rings, one for every few millimetres of depth, from which figures take their silhouettes
 * and onto which pieces are laid. On the page x runs across as the view says and y is the drop below the nape.
 */
interface PaddedRing {
  readonly depthBelowNape: number;
  readonly outline: Outline;
  /** All batting together at each point of the outline (mm). */
  readonly thickness: Float64Array;
  readonly girth: number;
}

export type PaddedSurface = readonly PaddedRing[];

const ringStep = 10;
const pointsPerPart = 6;

export function paddedSurface(
  sectionAt: SectionAt,
  pieces: readonly Piece[],
  top: number,
  bottom: number,
): PaddedSurface {
  const steps = Math.max(1, Math.ceil((bottom - top) / ringStep));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const depthBelowNape = top + ((bottom - top) * i) / steps;
    const outline = sectionOutline(sectionAt(depthBelowNape), pointsPerPart);
    const { leftFront, rightFront, leftBack, rightBack } = outline.quarters;
    const girth = leftFront + rightFront + leftBack + rightBack;
    return { depthBelowNape, outline, thickness: piecesThickness(pieces, { depth: depthBelowNape, outline }), girth };
  });
}

/** The two edges of the figure at each ring, left and right on the page. */
export function silhouette(
  surface: PaddedSurface,
  view: FigureView,
): { readonly left: readonly PicturePoint[]; readonly right: readonly PicturePoint[] } {
  const edges = surface.map((ring) => {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let i = 0; i < ring.outline.count; i++) {
      const across = ringPoint(ring, i, view);
      least = Math.min(least, across);
      most = Math.max(most, across);
    }
    return { left: at(least, ring.depthBelowNape), right: at(most, ring.depthBelowNape) };
  });
  return { left: edges.map(({ left }) => left), right: edges.map(({ right }) => right) };
}

function ringPoint({ outline, thickness }: PaddedRing, i: number, view: FigureView): number {
  const out = thickness[i] ?? 0;
  return acrossPage(
    view,
    (outline.x[i] ?? 0) + (outline.normalX[i] ?? 0) * out,
    (outline.y[i] ?? 0) + (outline.normalY[i] ?? 0) * out,
  );
}

/** Where a place on the form, given by its way along the bare surface and its depth, lies on the page. */
function placeOnPage(
  surface: PaddedSurface,
  view: FigureView,
  arcLength: number,
  depthBelowNape: number,
): PicturePoint {
  const below = surface.findIndex((ring) => ring.depthBelowNape >= depthBelowNape);
  const lower = surface[below === -1 ? surface.length - 1 : below];
  const upper = surface[Math.max(0, (below === -1 ? surface.length : below) - 1)];
  if (lower === undefined || upper === undefined) return at(0, depthBelowNape);
  const gap = lower.depthBelowNape - upper.depthBelowNape;
  const share = gap === 0 ? 0 : Math.min(1, Math.max(0, (depthBelowNape - upper.depthBelowNape) / gap));
  return at(
    acrossRing(upper, view, arcLength) * (1 - share) + acrossRing(lower, view, arcLength) * share,
    depthBelowNape,
  );
}

function acrossRing(ring: PaddedRing, view: FigureView, arcLength: number): number {
  const { from, to, share } = placeOnRing(ring, arcLength);
  return ringPoint(ring, from, view) * (1 - share) + ringPoint(ring, to, view) * share;
}

/**
 * The two points of a ring between which a place lies, and how far from the first; any number of turns round is the
 * same place.
 */
function placeOnRing(
  { outline, girth }: PaddedRing,
  arcLength: number,
): { readonly from: number; readonly to: number; readonly share: number } {
  const first = outline.arcLength[0] ?? 0;
  const turned = arcLength - girth * Math.floor((arcLength - first) / girth);
  let [from, beyond] = [0, outline.count];
  while (beyond - from > 1) {
    const middle = (from + beyond) >> 1;
    if ((outline.arcLength[middle] ?? 0) <= turned) from = middle;
    else beyond = middle;
  }
  const start = outline.arcLength[from] ?? 0;
  const end = beyond === outline.count ? first + girth : (outline.arcLength[beyond] ?? 0);
  return { from, to: beyond % outline.count, share: end === start ? 0 : (turned - start) / (end - start) };
}

/**
 * A section for every height below the nape, from the levels of a plan and what is known between them. Above the bust
 * nothing was measured; there the chest is drawn falling back towards the neck by a rule of ours.
 */
export function torsoCurves(levels: readonly PlannedLevel[], whose: "formSection" | "bodySection"): SectionAt {
  const sectionAt = torsoCurve(
    levels.flatMap((level) => [
      { name: level.name, depthBelowNape: level.depthBelowNape.value, section: level[whose] },
      ...level.below[whose === "formSection" ? "form" : "body"],
    ]),
  );
  const bust = levels.find(({ name }) => name === "bust")?.depthBelowNape.value ?? 0;
  return (depthBelowNape) => {
    const section = sectionAt(depthBelowNape);
    const share = chestShare(bust - depthBelowNape, bust);
    return "frontDepth" in section && share < 1 ? { ...section, frontDepth: mm(section.frontDepth * share) } : section;
  };
}

/** Depth of the chest above the bust as a share of the depth at the bust: all of it there, six tenths at the neck. */
const chestShare = (above: number, bust: number): number =>
  above <= 0 ? 1 : 1 - 0.4 * Math.sin((Math.min(1, above / bust) * Math.PI) / 2) ** 1.5;

/**
 * The parts of a piece that face the reader, as strips from top to bottom: the left and right edge on the page at each
 * of its rows. A piece that goes round both sides of the form can show two parts from behind.
 */
export type FacingStrip = readonly { readonly left: PicturePoint; readonly right: PicturePoint }[];

export function pieceOnFigure(
  piece: Piece,
  view: FigureView,
  sectionAt: SectionAt,
  surface: PaddedSurface,
): readonly FacingStrip[] {
  const rows = outermostLayer(piece).rows.map((row) => {
    const quarters = quarterLengths(sectionAt(row.depthBelowNape));
    const girth = quarters.leftFront + quarters.rightFront + quarters.leftBack + quarters.rightBack;
    const { start, end } = alongSurface(row, piece.anchor, quarters);
    return { row: { depthBelowNape: row.depthBelowNape, start, end }, girth, facing: facingStretch(view, quarters) };
  });
  return [-1, 0, 1].flatMap((turn) => {
    const strips: { left: PicturePoint; right: PicturePoint }[][] = [];
    let open: { left: PicturePoint; right: PicturePoint }[] | null = null;
    for (const { row, girth, facing } of rows) {
      const from = Math.max(facing.from, row.start + turn * girth);
      const to = Math.min(facing.to, row.end + turn * girth);
      if (to < from) {
        open = null;
        continue;
      }
      if (open === null) {
        open = [];
        strips.push(open);
      }
      const ends = [from, to].map((arcLength) => placeOnPage(surface, view, arcLength, row.depthBelowNape));
      const [one, other] = ends;
      if (one !== undefined && other !== undefined)
        open.push(one.x <= other.x ? { left: one, right: other } : { left: other, right: one });
    }
    return strips.filter((strip) => strip.length > 1 && widest(strip) > narrowestShown);
  });
}

const widest = (strip: FacingStrip): number =>
  strip.reduce((most, { left, right }) => Math.max(most, right.x - left.x), 0);

/** A part narrower than this is an edge seen from the side and is left out (mm). */
const narrowestShown = 3;

export const stripOutline = (strip: FacingStrip): string =>
  smoothRuns([strip.map(({ left }) => left), strip.map(({ right }) => right).toReversed()]);
