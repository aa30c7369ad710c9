import { quarterLengths } from "../../core/geometry/outline";
import { alongSurface } from "../../core/padding/layerThickness";
import { outermostLayer, type Piece } from "../../core/padding/piece";
import { facingStretch, type FigureView } from "./figureView";
import { type PaddedSurface, placeOnPage } from "./paddedSurface";
import { smoothRuns } from "./pathText";
import type { PicturePoint } from "./scene";
import type { SectionAt } from "../../core/body/torsoCurve";

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
    return { row: { drop: row.depthBelowNape, start, end }, girth, facing: facingStretch(view, quarters) };
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
      const ends = [from, to].map((along) => placeOnPage(surface, view, along, row.drop));
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
