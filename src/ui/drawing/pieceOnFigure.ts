import type { SectionAt } from "../../core/body/torsoCurve";
import { girthOf } from "../../core/geometry/outline";
import type { Piece } from "../../core/padding/piece";
import type { PaddedSection } from "../../core/surface/paddedSection";
import { pieceRows, pointAtPlace, type SurfacePlace } from "../../core/surface/paddedSurface";
import { acrossPage, facingStretch, type FigureView } from "./figureView";
import { smoothRuns } from "./pathText";
import { at, type PicturePoint } from "./scene";

/**
 * The parts of a piece that face the reader, as strips from top to bottom: the left and right edge on the page at each
 * of its rows. A piece that goes round both sides of the form can show two parts from behind.
 */
export type FacingStrip = readonly { readonly left: PicturePoint; readonly right: PicturePoint }[];

export function pieceOnFigure(
  piece: Piece,
  view: FigureView,
  bareAt: SectionAt,
  sections: readonly PaddedSection[],
): readonly FacingStrip[] {
  const rows = pieceRows(piece, bareAt).map((row) => ({
    ...row,
    girth: girthOf(row.quarters),
    facing: facingStretch(view, row.quarters),
  }));
  return [-1, 0, 1].flatMap((turn) => {
    const strips: { left: PicturePoint; right: PicturePoint }[][] = [];
    let open: { left: PicturePoint; right: PicturePoint }[] | null = null;
    for (const { depthBelowNape, start, end, girth, facing } of rows) {
      const from = Math.max(facing.from, start + turn * girth);
      const to = Math.min(facing.to, end + turn * girth);
      if (to < from) {
        open = null;
        continue;
      }
      if (open === null) {
        open = [];
        strips.push(open);
      }
      const [one, other] = [from, to].map((arcLength) => onPage(sections, view, { arcLength, depthBelowNape }));
      if (one !== undefined && other !== undefined)
        open.push(one.x <= other.x ? { left: one, right: other } : { left: other, right: one });
    }
    return strips.filter((strip) => strip.length > 1 && widest(strip) > narrowestShown);
  });
}

function onPage(sections: readonly PaddedSection[], view: FigureView, place: SurfacePlace): PicturePoint {
  const { x, y } = pointAtPlace(sections, place);
  return at(acrossPage(view, x, y), place.depthBelowNape);
}

const widest = (strip: FacingStrip): number =>
  strip.reduce((most, { left, right }) => Math.max(most, right.x - left.x), 0);

/** A part narrower than this is an edge seen from the side and is left out (mm). */
const narrowestShown = 3;

export const stripOutline = (strip: FacingStrip): string =>
  smoothRuns([strip.map(({ left }) => left), strip.map(({ right }) => right).toReversed()]);
