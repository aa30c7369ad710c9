import type { SectionAt } from "../../../core/body/torsoCurve";
import { outermostLayer, type Piece } from "../../../core/padding/piece";
import { type PaddedSection, placeAt } from "../../../core/surface/paddedSection";
import { firstAtOrBelow, pieceRows, pointAtPlace, type SurfacePlace } from "../../../core/surface/paddedSurface";
import type { Look, SeenPoint, StandingRing } from "./turningSurface";

/** The outline of a piece where it lies on the padded form, as runs of places that face the viewer. */
export function pieceEdges(
  piece: Piece,
  bareAt: SectionAt,
  rings: readonly StandingRing[],
  look: Look,
): readonly (readonly SeenPoint[])[] {
  const { rows: own, wrap } = outermostLayer(piece);
  if (wrap) {
    const ends = [own[0], own.at(-1)].flatMap((row) => row?.depthBelowNape ?? []);
    return ends.flatMap((depth) => facingRuns(ringAt(rings, depth), look, depth));
  }
  const rows = pieceRows(piece, bareAt);
  const places = [
    ...rows.map(({ depthBelowNape, start }) => ({ depthBelowNape, arcLength: start })),
    ...rows.toReversed().map(({ depthBelowNape, end }) => ({ depthBelowNape, arcLength: end })),
  ];
  const closed = [...places, ...places.slice(0, 1)];
  const sections = rings.map(({ section }) => section);
  return runs(filledIn(closed).map((place) => placeOn({ rings, sections }, place, look)));
}

/** A ring all round, cut into the parts that face the viewer. */
export const facingRuns = (
  ring: StandingRing | undefined,
  look: Look,
  depth: number,
): readonly (readonly SeenPoint[])[] => {
  if (ring === undefined) return [];
  const points = Array.from(ring.outermost, (_, at) => ringPoint(ring, at, depth, look));
  return runs([...points, ...points.slice(0, 1)]);
};

interface Facing {
  readonly point: SeenPoint;
  readonly faces: boolean;
}

function runs(points: readonly Facing[]): readonly (readonly SeenPoint[])[] {
  const found: SeenPoint[][] = [];
  points.forEach(({ point, faces }, i) => {
    if (!faces) return;
    if (i > 0 && points[i - 1]?.faces === true) found.at(-1)?.push(point);
    else found.push([point]);
  });
  return found.filter((run) => run.length > 1);
}

/** Long steps along the surface are filled in, so that an edge follows the curve of the form. */
function filledIn(places: readonly SurfacePlace[]): readonly SurfacePlace[] {
  return places.flatMap((to, i) => {
    const from = places[i - 1];
    if (from === undefined) return [to];
    const [along, down] = [to.arcLength - from.arcLength, to.depthBelowNape - from.depthBelowNape];
    const steps = Math.max(1, Math.ceil(Math.hypot(along, down) / longestStep));
    return Array.from({ length: steps }, (_, step) => ({
      arcLength: from.arcLength + (along * (step + 1)) / steps,
      depthBelowNape: from.depthBelowNape + (down * (step + 1)) / steps,
    }));
  });
}

const longestStep = 10;

const ringAt = (rings: readonly StandingRing[], depth: number): StandingRing | undefined =>
  rings.find(({ section }) => section.depthBelowNape >= depth) ?? rings.at(-1);

/** A place on the padded surface, and whether it faces the viewer where it lies on the section below it. */
function placeOn(
  { rings, sections }: { readonly rings: readonly StandingRing[]; readonly sections: readonly PaddedSection[] },
  place: SurfacePlace,
  look: Look,
): Facing {
  const { x, y } = pointAtPlace(sections, place);
  const ring = rings[firstAtOrBelow(sections, place.depthBelowNape)];
  return {
    point: look(x, y, place.depthBelowNape),
    faces: ring !== undefined && isFacing(ring, placeAt(ring.section, place.arcLength).from, look),
  };
}

const ringPoint = (ring: StandingRing, at: number, depth: number, look: Look): Facing => ({
  point: look(ring.section.points[2 * at] ?? 0, ring.section.points[2 * at + 1] ?? 0, depth),
  faces: isFacing(ring, at, look),
});

/** Whether a ring looks outwards to the viewer at a point, told by its neighbours on either side. */
function isFacing({ section: { points, depthBelowNape } }: StandingRing, at: number, look: Look): boolean {
  const count = points.length / 2;
  const [before, after] = [(at + count - 1) % count, (at + 1) % count];
  const outX = (points[2 * before + 1] ?? 0) - (points[2 * after + 1] ?? 0);
  const outY = (points[2 * after] ?? 0) - (points[2 * before] ?? 0);
  return look(outX, outY, depthBelowNape).near > look(0, 0, depthBelowNape).near;
}
