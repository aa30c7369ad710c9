import { alongSurface } from "../../../core/padding/layerThickness";
import { outermostLayer, type Piece } from "../../../core/padding/piece";
import type { Look, SeenPoint, StandingRing, TurningRing } from "./turningSurface";

/** The outline of a piece where it lies on the padded form, as runs of places that face the viewer. */
export function pieceEdges(
  piece: Piece,
  surface: readonly TurningRing[],
  rings: readonly StandingRing[],
  look: Look,
): readonly (readonly SeenPoint[])[] {
  const { rows: own, wrap } = outermostLayer(piece);
  if (wrap) {
    const ends = [own[0], own.at(-1)].flatMap((row) => row?.depthBelowNape ?? []);
    return ends.flatMap((depth) => facingRuns(ringAt(rings, depth), look, depth));
  }
  const rows = own.map((row) => {
    const ring = surface.find(({ depthBelowNape }) => depthBelowNape >= row.depthBelowNape) ?? surface.at(-1);
    const { start, end } = ring === undefined ? row : alongSurface(row, piece.anchor, ring.outline.quarters);
    return { depthBelowNape: row.depthBelowNape, start, end };
  });
  const places = [
    ...rows.map(({ depthBelowNape, start }) => ({ depthBelowNape, arcLength: start })),
    ...rows.toReversed().map(({ depthBelowNape, end }) => ({ depthBelowNape, arcLength: end })),
  ];
  const closed = [...places, ...places.slice(0, 1)];
  const points = filledIn(closed).map(({ depthBelowNape, arcLength }) =>
    placeOn(surface, rings, depthBelowNape, arcLength, look),
  );
  return runs(points);
}

/** A ring all round, cut into the parts that face the viewer. */
export const facingRuns = (
  ring: StandingRing | undefined,
  look: Look,
  depth: number,
): readonly (readonly SeenPoint[])[] => {
  if (ring === undefined) return [];
  const points = Array.from(ring.x, (_, at) => ringPoint(ring, at, depth, look));
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
function filledIn(
  places: readonly { readonly depthBelowNape: number; readonly arcLength: number }[],
): readonly { readonly depthBelowNape: number; readonly arcLength: number }[] {
  return places.flatMap((to, i) => {
    const from = places[i - 1];
    if (from === undefined) return [to];
    const steps = Math.max(
      1,
      Math.ceil(Math.hypot(to.arcLength - from.arcLength, to.depthBelowNape - from.depthBelowNape) / longestStep),
    );
    return Array.from({ length: steps }, (_, step) => ({
      depthBelowNape: from.depthBelowNape + ((to.depthBelowNape - from.depthBelowNape) * (step + 1)) / steps,
      arcLength: from.arcLength + ((to.arcLength - from.arcLength) * (step + 1)) / steps,
    }));
  });
}

const longestStep = 10;

const ringAt = (rings: readonly StandingRing[], depth: number): StandingRing | undefined =>
  rings.find((ring) => ring.depthBelowNape >= depth) ?? rings.at(-1);

/** A place on the padded surface, given by its way along the bare surface and its depth, between the two rings about it. */
function placeOn(
  surface: readonly TurningRing[],
  rings: readonly StandingRing[],
  depth: number,
  arcLength: number,
  look: Look,
): Facing {
  const found = surface.findIndex((ring) => ring.depthBelowNape >= depth);
  const lower = found === -1 ? surface.length - 1 : found;
  const upper = Math.max(0, lower - 1);
  const [above, below] = [
    onRing(surface[upper], rings[upper], arcLength),
    onRing(surface[lower], rings[lower], arcLength),
  ];
  const [from, to] = [rings[upper]?.depthBelowNape ?? depth, rings[lower]?.depthBelowNape ?? depth];
  const share = to === from ? 1 : Math.min(1, Math.max(0, (depth - from) / (to - from)));
  const ring = rings[lower];
  return {
    point: look(above.x * (1 - share) + below.x * share, above.y * (1 - share) + below.y * share, depth),
    faces: ring !== undefined && isFacing(ring, below.at, look),
  };
}

/** A place on a ring by its way along the bare surface, any number of turns round, and the point before it. */
function onRing(
  bare: TurningRing | undefined,
  ring: StandingRing | undefined,
  arcLength: number,
): { readonly x: number; readonly y: number; readonly at: number } {
  if (bare === undefined || ring === undefined) return { x: 0, y: 0, at: 0 };
  const { outline } = bare;
  const first = outline.arcLength[0] ?? 0;
  const { leftFront, leftBack, rightFront, rightBack } = outline.quarters;
  const girth = leftFront + leftBack + rightFront + rightBack;
  const place = arcLength - girth * Math.floor((arcLength - first) / girth);
  let at = 0;
  while (at + 1 < outline.count && (outline.arcLength[at + 1] ?? 0) <= place) at++;
  const next = (at + 1) % outline.count;
  const start = outline.arcLength[at] ?? 0;
  const end = next === 0 ? first + girth : (outline.arcLength[next] ?? 0);
  const share = end === start ? 0 : (place - start) / (end - start);
  const mix = (values: Float64Array): number => (values[at] ?? 0) * (1 - share) + (values[next] ?? 0) * share;
  return { x: mix(ring.x), y: mix(ring.y), at };
}

const ringPoint = (ring: StandingRing, at: number, depth: number, look: Look): Facing => ({
  point: look(ring.x[at] ?? 0, ring.y[at] ?? 0, depth),
  faces: isFacing(ring, at, look),
});

/** Whether a ring looks outwards to the viewer at a point, told by its neighbours on either side. */
function isFacing({ x, y, depthBelowNape }: StandingRing, at: number, look: Look): boolean {
  const [before, after] = [(at + x.length - 1) % x.length, (at + 1) % x.length];
  const outX = (y[before] ?? 0) - (y[after] ?? 0);
  const outY = (x[after] ?? 0) - (x[before] ?? 0);
  return look(outX, outY, depthBelowNape).near > look(0, 0, depthBelowNape).near;
}
