import file from "../../shared/real-sections.json";
import { type CheckedLevelName, checkedLevelNames } from "./planCheckerFile";

/**
 * Bodies and forms that nobody here drew: horizontal slices of three-dimensional shapes (shared/real-sections.json, with
 * source, frame and caveats). A tape reads the convex hull of a slice; between two slices the hull is blended by its
 * support function, which keeps it convex. Shares no code with the planner. Millimeters; x to the wearer's left, y to the
 * front, depths down from the nape.
 */
export interface TrueShape {
  readonly id: string;
  readonly levels: { readonly [level in CheckedLevelName]: TrueLevel };
  readonly lengths: TrueLengths;
  /** The highest and the lowest slice of the trunk; below it the legs are cut or nothing is known. */
  readonly top: number;
  readonly bottom: number;
  readonly sectionAt: (depthBelowNape: number) => TrueSection;
}

export type TrueLengths = (typeof file)["bodies"][number]["lengths"];

/** What a tape and a caliper truly read at one level or at any other depth. */
export interface TrueReading {
  readonly depthBelowNape: number;
  readonly girth: number;
  readonly front: number;
  readonly back: number;
  readonly breadth: number;
  readonly depth: number;
}

export type TrueLevel = TrueReading;

/** A closed convex ring from center back over the wearer's right, center front and the left, with its side seams. */
export interface TrueSection {
  readonly ring: readonly TruePoint[];
  /** Height (y) of the side seams on the wearer's left and right. */
  readonly seams: readonly [left: number, right: number];
}

export interface TruePoint {
  readonly x: number;
  readonly y: number;
}

interface Slice {
  readonly depth: number;
  readonly support: Float64Array;
  readonly seams: readonly [number, number];
}

/** Directions in which a hull's support is taken: its ring is then long by less than a fortieth of a millimeter a meter. */
const directions = 360;
const angles = Array.from({ length: directions }, (_, i) => (2 * Math.PI * i) / directions);

const shapeOf = (source: (typeof file)["bodies"][number] | (typeof file)["forms"][number]): TrueShape => {
  const slices = [...source.slices]
    .sort((a, b) => a.dropMm - b.dropMm)
    .map(
      ({ dropMm, outline, seamMm }): Slice => ({
        depth: dropMm,
        support: Float64Array.from(angles, (angle) => supportOf(outline as unknown as Spot[], angle)),
        seams: [seamMm[0] as number, seamMm[1] as number],
      }),
    );
  const sectionAt = (depth: number) => sectionBetween(slices, depth);
  return {
    id: source.id,
    levels: Object.fromEntries(
      checkedLevelNames.map((level) => [level, readAt(sectionAt, source.levels[level].dropMm)]),
    ) as TrueShape["levels"],
    lengths: source.lengths,
    top: slices[0]?.depth ?? 0,
    bottom: slices.at(-1)?.depth ?? 0,
    sectionAt,
  };
};

type Spot = readonly [number, number];

const supportOf = (outline: readonly Spot[], angle: number): number =>
  Math.max(...outline.map(([x, y]) => x * Math.cos(angle) + y * Math.sin(angle)));

function sectionBetween(slices: readonly Slice[], depth: number): TrueSection {
  const below = slices.findIndex((slice) => slice.depth >= depth);
  if (below === -1 || depth < (slices[0] as Slice).depth)
    throw new Error(`no slice reaches ${depth} mm below the nape`);
  const [to, from] = [slices[below] as Slice, slices[Math.max(0, below - 1)] as Slice];
  const share = to.depth === from.depth ? 0 : (depth - from.depth) / (to.depth - from.depth);
  const mix = (a: number, b: number) => a + (b - a) * share;
  return {
    ring: ringOf(Float64Array.from(to.support, (value, i) => mix(from.support[i] as number, value))),
    seams: [mix(from.seams[0], to.seams[0]), mix(from.seams[1], to.seams[1])],
  };
}

/** The corners between each supporting line and the next, from center back over the wearer's right. */
function ringOf(support: Float64Array): readonly TruePoint[] {
  const step = (2 * Math.PI) / directions;
  const corners = angles.map((angle, i) => {
    const [h, next] = [support[i] as number, support[(i + 1) % directions] as number];
    const across = (next - h * Math.cos(step)) / Math.sin(step);
    return {
      x: h * Math.cos(angle) - across * Math.sin(angle),
      y: h * Math.sin(angle) + across * Math.cos(angle),
    };
  });
  // Angles run from the left over the front; the ring is wanted the other way round, from center back.
  const start = Math.round(0.75 * directions);
  return angles.map((_, i) => corners[(start - i - 1 + directions) % directions] as TruePoint);
}

/** What a tape and a caliper read round a bare section. */
export function bareTrueReading({ ring, seams }: TrueSection): Omit<TrueReading, "depthBelowNape"> {
  const halves = halvesOf(ring, seams);
  const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
  return {
    ...halves,
    breadth: Math.max(...xs) - Math.min(...xs),
    depth: Math.max(...ys) - Math.min(...ys),
  };
}

const readAt = (sectionAt: TrueShape["sectionAt"], depthBelowNape: number): TrueReading => ({
  depthBelowNape,
  ...bareTrueReading(sectionAt(depthBelowNape)),
});

/** What a tape and a caliper truly read of a shape at any depth between its first and last slice. */
export const trueReading = ({ sectionAt }: TrueShape, depthBelowNape: number): TrueReading =>
  readAt(sectionAt, depthBelowNape);

/** The length of a closed ring and of its part in front of the side seams, each side at its own height. */
export function halvesOf(
  ring: readonly TruePoint[],
  [left, right]: TrueSection["seams"],
): { readonly girth: number; readonly front: number; readonly back: number } {
  let [front, girth] = [0, 0];
  ring.forEach((from, i) => {
    const to = ring[(i + 1) % ring.length] as TruePoint;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const seam = from.x + to.x > 0 ? left : right;
    const [above, next] = [from.y - seam, to.y - seam];
    girth += length;
    if (above >= 0 && next >= 0) front += length;
    else if (above > 0 || next > 0) front += (length * Math.max(above, next)) / Math.abs(above - next);
  });
  return { girth, front, back: girth - front };
}

export const trueBodies: readonly TrueShape[] = file.bodies.map(shapeOf);
export const trueForms: readonly TrueShape[] = file.forms.map(shapeOf);

/** What the file itself says of a level, for a check of the reckoning here. */
export const statedLevels = [...file.bodies, ...file.forms].map(({ id, levels }) => ({ id, levels }));
