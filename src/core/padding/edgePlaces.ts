import { farthestEdge, type Gap, leastHeight, nearestEdge } from "./levelGaps";
import type { PlannedLayer } from "./outlinePieces";
import type { ShapingProblem } from "./shapingProblem";
import { type Half, halves } from "./sideLevel";

/** Where the top and bottom edge of a layer lie (depth below the nape, mm), and how long its feather is. */
export interface EdgePlaces {
  readonly top: number;
  readonly bottom: number;
  readonly feather: number;
}

/** Ends of one stack lie at most this far apart (mm) where nothing is known of the body between. */
const longestStep = 40;

/** Which layers lie around all and which over the front and the back, each from the form outwards, and what they fill. */
export interface EdgeProblem {
  readonly around: readonly PlannedLayer[];
  readonly front: readonly PlannedLayer[];
  readonly back: readonly PlannedLayer[];
  readonly depths: readonly number[];
  readonly gaps: readonly Gap[];
  readonly gainAt: ShapingProblem["gainAt"];
}

/**
 * The edges of all layers: those that end in one gap are spread over its room along the curve of the body, so that as many
 * layers are left at any height as it asks for there, the innermost nearest to the line it covers. What goes all around lies
 * beneath front and back and has the first places of both.
 */
export function edgePlaces(problem: EdgeProblem): ReadonlyMap<PlannedLayer, EdgePlaces> {
  const { around, front, back, depths, gaps } = problem;
  const up = new Map<PlannedLayer, number>();
  const down = new Map<PlannedLayer, number>();
  for (const [at, gap] of gaps.entries()) {
    const shares = {
      front: sharesOf(problem, at, ["front"]),
      back: sharesOf(problem, at, ["back"]),
      around: sharesOf(problem, at, ["front", "back"]),
    };
    standardDeviation(problem, ({ first }) => first === at, placing(gap, shares, true), up);
    standardDeviation(problem, ({ last }) => last + 1 === at, placing(gap, shares, false), down);
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

type Part = "around" | "front" | "back";

/** Where there is room, an edge keeps so much more from the line it covers (mm), for hands that feather 25 mm whatever is asked. */
const spare = 3;

/** How far from the line it covers the edge of the at-th of so many layers lies (mm). */
type Place = (at: number, count: number, part: Part) => number;

/** The shares of the change from line to line that are made at even steps down a gap; null where there is no change to follow. */
type Shares = readonly number[] | null;

const shareSteps = 32;

/** A change of gain smaller than this from line to line (mm, in a half) says nothing of the way between. */
const leastChange = 6;

function sharesOf({ depths, gainAt }: EdgeProblem, gap: number, parts: readonly Half[]): Shares {
  const [above, below] = [depths[gap - 1], depths[gap]];
  if (above === undefined || below === undefined) return null;
  const gain = (depth: number) => parts.reduce((sum, half) => sum + gainAt[half](depth), 0);
  const [from, change] = [gain(above), gain(below) - gain(above)];
  if (Math.abs(change) < leastChange * parts.length) return null;
  let made = 0;
  return Array.from({ length: shareSteps + 1 }, (_, i) => {
    const share = (gain(above + ((below - above) * i) / shareSteps) - from) / change;
    made = Math.max(made, Math.min(1, share));
    return made;
  });
}

function placing(gap: Gap, shares: { readonly [part in Part]: Shares }, isUp: boolean): Place {
  return (at, count, part) => {
    const known = shares[part];
    const near = nearestEdge(gap) + Math.min(spare, gap.room / 3);
    const step = Math.min(longestStep, gap.room / count);
    const even = nearestEdge(gap) + (gap.room - step * count) / 2 + step * (at + 0.5);
    if (known === null) return Math.max(near, even);
    const share = (at + 0.5) / count;
    const way = (gap.length * whereMade(known, isUp ? 1 - share : share)) / shareSteps;
    return Math.max(near, Math.min(farthestEdge(gap), (isUp ? gap.length - way : way) + gap.feather / 2));
  };
}

/** Down which step a share is made, between steps in proportion. */
function whereMade(shares: readonly number[], share: number): number {
  const after = shares.findIndex((made) => made >= share);
  if (after <= 0) return after === 0 ? 0 : shareSteps;
  const [before, made] = [shares[after - 1] as number, shares[after] as number];
  return after - 1 + (share - before) / (made - before);
}

function standardDeviation(
  { around, front, back }: EdgeProblem,
  endsHere: (layer: PlannedLayer) => boolean,
  place: Place,
  into: Map<PlannedLayer, number>,
): void {
  const beneath = around.filter(endsHere);
  const over = { front: front.filter(endsHere), back: back.filter(endsHere) };
  const usual = beneath.length + (over.front.length + over.back.length) / 2;
  for (const [i, layer] of beneath.entries()) into.set(layer, place(i, usual, "around"));
  const outermost = beneath.at(-1);
  const least = outermost === undefined ? 0 : (into.get(outermost) as number);
  for (const half of halves) {
    const count = beneath.length + over[half].length;
    for (const [i, layer] of over[half].entries()) {
      into.set(layer, Math.max(least, place(beneath.length + i, count, half)));
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
