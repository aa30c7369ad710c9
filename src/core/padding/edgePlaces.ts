import { farthestEdge, type Gap, leastHeight, nearestEdge } from "./levelGaps";
import type { PlannedLayer } from "./outlinePieces";

/** Where the top and bottom edge of a layer lie (depth below the nape, mm), and how long its feather is. */
export interface EdgePlaces {
  readonly top: number;
  readonly bottom: number;
  readonly feather: number;
}

/** Ends of one stack lie at most this far apart (mm). */
const longestStep = 40;

/**
 * The edges of all layers: those that end in one gap are spread evenly over its room, the innermost nearest to the line it covers, the
 * outermost farthest. What goes all around lies beneath front and back and has the first places of both.
 */
export function edgePlaces(
  around: readonly PlannedLayer[],
  front: readonly PlannedLayer[],
  back: readonly PlannedLayer[],
  depths: readonly number[],
  gaps: readonly Gap[],
): ReadonlyMap<PlannedLayer, EdgePlaces> {
  const up = new Map<PlannedLayer, number>();
  const down = new Map<PlannedLayer, number>();
  for (const [at, gap] of gaps.entries()) {
    spread(around, front, back, ({ first }) => first === at, gap, up);
    spread(around, front, back, ({ last }) => last + 1 === at, gap, down);
  }
  for (const half of [front, back]) raise([...around, ...half], up, down, depths, gaps);
  const places = new Map<PlannedLayer, EdgePlaces>();
  for (const [layer, above] of up) {
    const { first, last } = layer;
    places.set(layer, {
      top: (depths[first] as number) - above,
      bottom: (depths[last] as number) + (down.get(layer) as number),
      feather: Math.min((gaps[first] as Gap).feather, (gaps[last + 1] as Gap).feather),
    });
  }
  return places;
}

function spread(
  around: readonly PlannedLayer[],
  front: readonly PlannedLayer[],
  back: readonly PlannedLayer[],
  endsHere: (layer: PlannedLayer) => boolean,
  gap: Gap,
  into: Map<PlannedLayer, number>,
): void {
  const first = around.filter(endsHere);
  const halves = [front.filter(endsHere), back.filter(endsHere)];
  const most = Math.max(...halves.map(({ length }) => length));
  const count = first.length + most;
  if (count === 0) return;
  const step = Math.min(longestStep, gap.room / count);
  const start = nearestEdge(gap) + (gap.room - step * count) / 2;
  const place = (at: number) => start + step * (at + 0.5);
  for (const [i, layer] of first.entries()) into.set(layer, place(i));
  for (const half of halves) {
    for (const [i, layer] of half.entries()) {
      into.set(layer, place(first.length + ((i + 0.5) * most) / half.length - 0.5));
    }
  }
}

/** A layer that came out too low for a hand reaches further, as far as its gaps allow, and no layer over it less far. */
function raise(
  layers: readonly PlannedLayer[],
  up: Map<PlannedLayer, number>,
  down: Map<PlannedLayer, number>,
  depths: readonly number[],
  gaps: readonly Gap[],
): void {
  for (const [i, layer] of layers.entries()) {
    const { first, last } = layer;
    const between = (depths[last] as number) - (depths[first] as number);
    const missing = leastHeight - between - (up.get(layer) as number) - (down.get(layer) as number);
    if (missing <= 0) continue;
    const roomAbove = farthestEdge(gaps[first] as Gap) - (up.get(layer) as number);
    const roomBelow = farthestEdge(gaps[last + 1] as Gap) - (down.get(layer) as number);
    const share = Math.min(1, missing / Math.max(1, roomAbove + roomBelow));
    const above = (up.get(layer) as number) + share * roomAbove;
    const below = (down.get(layer) as number) + share * roomBelow;
    for (const over of layers.slice(i)) {
      if (over.first === first) up.set(over, Math.max(up.get(over) as number, above));
      if (over.last === last) down.set(over, Math.max(down.get(over) as number, below));
    }
  }
}
