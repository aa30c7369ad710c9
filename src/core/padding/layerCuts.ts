import type { Section } from "../body/section";
import type { LevelName } from "../body/vocabulary";
import { type Outline, sectionOutline } from "../geometry/outline";
import { type Millimetres, mm } from "../units";
import { fromAnchor, addLayer } from "./layerThickness";
import { type Anchor, type Layer, type LayerRow, rowAt } from "./layer";
import type { Darts, EndPlace, LayerCut, LineWidth } from "./layerCut";

type SectionAt = (depthBelowNape: number) => Section;

/** A layer where it lies: in the order from the form outwards, whatever it is pinned in. */
export interface StackedLayer {
  readonly layer: Layer;
  readonly anchor: Anchor;
  readonly isDisc: boolean;
}

export interface NamedLine {
  readonly name: LevelName;
  readonly depth: number;
}

/**
 * The size to cut every layer, on the surface it lies on: the bare form with every layer beneath it. A stretch of the surface that
 * turns through an angle a under padding of thickness t is longer by a·t (parallel curves), so a width is the bare width
 * plus the padding beneath summed over the turn of the outline.
 */
export function layerCuts(
  stack: readonly StackedLayer[],
  sectionAt: SectionAt,
  lines: readonly NamedLine[],
): ReadonlyMap<Layer, LayerCut> {
  const heights = new Map<number, Height>();
  // How many layers, from the first on, each height has felt so far: one that nobody asks for again feels no more.
  const felt = new Map<Height, number>();
  const heightAt = (depth: number, beneath: number): Height => {
    const height = heights.get(depth) ?? newHeight(depth, sectionAt);
    heights.set(depth, height);
    for (const { layer, anchor } of stack.slice(felt.get(height) ?? 0, beneath))
      addLayer(height.beneath, layer, anchor, height);
    felt.set(height, beneath);
    return height;
  };
  return new Map(stack.map((one, i) => [one.layer, cutOf(one, lines, (depth) => heightAt(depth, i))]));
}

/** Points in each eighth of the outline: a cut is wanted to the millimeter, not finer. */
const cutPoints = 8;

/** A height of the form with how thick the layers lie that are beneath. */
interface Height {
  readonly depth: number;
  readonly outline: Outline;
  readonly turn: Float64Array;
  readonly beneath: Float64Array;
}

function newHeight(depth: number, sectionAt: SectionAt): Height {
  const outline = sectionOutline(sectionAt(depth), cutPoints);
  const { count, normalX, normalY } = outline;
  const turn = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const next = (i + 1) % count;
    const cross =
      (normalX[i] as number) * (normalY[next] as number) - (normalY[i] as number) * (normalX[next] as number);
    const dot = (normalX[i] as number) * (normalX[next] as number) + (normalY[i] as number) * (normalY[next] as number);
    turn[i] = Math.abs(Math.atan2(cross, dot));
  }
  return { depth, outline, turn, beneath: new Float64Array(count) };
}

type HeightAt = (depth: number) => Height;

function cutOf({ layer, anchor, isDisc }: StackedLayer, lines: readonly NamedLine[], heightAt: HeightAt): LayerCut {
  if (isDisc) return discCut(layer, anchor, heightAt);
  const [top, bottom] = [layer.rows[0] as LayerRow, layer.rows[layer.rows.length - 1] as LayerRow];
  const crossed = lines.filter(({ depth }) => depth > top.depthBelowNape && depth < bottom.depthBelowNape);
  const stops = [top.depthBelowNape, ...crossed.map(({ depth }) => depth), bottom.depthBelowNape];
  const heights = stops.map(heightAt);
  let down = 0;
  const measured = heights.map((height, i) => {
    const before = heights[i - 1];
    if (before !== undefined) {
      down += Math.hypot(height.depth - before.depth, distanceOut(height, anchor) - distanceOut(before, anchor));
    }
    return { below: down, ...widthsAt(layer, anchor, height) };
  });
  const widths = crossed.map(({ name }, i): LineWidth => {
    const { below, left, right } = measured[i + 1] as Measured;
    return { level: name, belowTop: mm(below), left: mm(left), right: mm(right) };
  });
  const flat = layer.wrap ? flatStrip(measured) : { ends: endWidths(measured), darts: [] };
  return {
    shape: layer.wrap ? "strip" : "panel",
    height: mm(down),
    top: endPlace(top.depthBelowNape, lines),
    bottom: endPlace(bottom.depthBelowNape, lines),
    topWidth: flat.ends[0],
    bottomWidth: flat.ends[1],
    widths,
    darts: flat.darts.map(
      ({ at, ...dart }): Darts => ({
        from: at === 0 ? "top" : at === measured.length - 1 ? "bottom" : (crossed[at - 1] as NamedLine).name,
        ...dart,
      }),
    ),
  };
}

interface Measured {
  readonly below: number;
  readonly left: number;
  readonly right: number;
}

const whole = ({ left, right }: Measured): number => left + right;

const endWidths = (measured: readonly Measured[]): readonly [Millimetres, Millimetres] => [
  mm(whole(measured[0] as Measured)),
  mm(whole(measured[measured.length - 1] as Measured)),
];

/**
 * A strip is cut with straight edges, long enough everywhere; what it is then too long at an edge or a line is taken in by darts,
 * spread evenly, never at one seam: so few that hands can sew them, each as wide at a line as the strip is too long there.
 */
function flatStrip(measured: readonly Measured[]): {
  readonly ends: readonly [Millimetres, Millimetres];
  readonly darts: readonly (Omit<Darts, "from"> & { readonly at: number })[];
} {
  const [top, bottom] = [measured[0] as Measured, measured[measured.length - 1] as Measured];
  const straight = ({ below }: Measured) =>
    whole(top) + ((whole(bottom) - whole(top)) * (below - top.below)) / (bottom.below - top.below);
  const longer = Math.max(0, ...measured.map((one) => whole(one) - straight(one)));
  const excess = measured.map((one) => straight(one) + longer - whole(one));
  const count = Math.max(fewestDarts, Math.ceil(Math.max(...excess) / widestDart));
  const darts = measured.flatMap((one, at) => {
    const width = (excess[at] as number) / count;
    if (width < smoothedIn) return [];
    const [before, after] = [measured[at - 1], measured[at + 1]];
    const depth = Math.min(
      before === undefined ? Number.POSITIVE_INFINITY : one.below - before.below,
      after === undefined ? Number.POSITIVE_INFINITY : after.below - one.below,
    );
    return [{ at, kind: "dart" as const, count, width: mm(width), depth: mm(depth) }];
  });
  return { ends: [mm(whole(top) + longer), mm(whole(bottom) + longer)], darts };
}

/** A dart that would take up less than this (mm) is smoothed into batting by hand. Common practice, no source. */
const smoothedIn = 6;

/** A dart takes up no more than this (mm); the same darts run through every line, one at each side of front and back at least. */
const widestDart = 32;
const fewestDarts = 4;

function discCut(layer: Layer, anchor: Anchor, heightAt: HeightAt): LayerCut {
  const middle = layer.rows[Math.floor(layer.rows.length / 2)] as LayerRow;
  const height = heightAt(middle.depthBelowNape);
  return { shape: "disc", diameter: mm(stretch(height, anchor, middle.start, middle.end)) };
}

function widthsAt(layer: Layer, anchor: Anchor, height: Height) {
  const { start, end } = rowAt(layer.rows, height.depth);
  if (!layer.wrap) return { left: stretch(height, anchor, 0, end), right: stretch(height, anchor, start, 0) };
  const { leftFront, leftBack, rightFront, rightBack } = height.outline.quarters;
  return {
    left: stretch(height, "centerFront", 0, leftFront + leftBack),
    right: stretch(height, "centerFront", -rightFront - rightBack, 0),
  };
}

/** The length of the surface over a stretch of the bare outline (mm), told from an anchor; negative if the stretch runs backwards. */
function stretch({ outline, turn, beneath }: Height, anchor: Anchor, from: number, to: number): number {
  if (to < from) return -stretch({ outline, turn, beneath } as Height, anchor, to, from);
  const { count, arcLength, quarters } = outline;
  const girth = quarters.leftFront + quarters.leftBack + quarters.rightFront + quarters.rightBack;
  const isTurned = anchor === "centerBack";
  let added = 0;
  for (let i = 0; i < count; i++) {
    const next = (i + 1) % count;
    const begin = fromAnchor(arcLength[i] as number, anchor, outline);
    const step =
      (next === 0 ? (arcLength[0] as number) + girth : (arcLength[next] as number)) - (arcLength[i] as number);
    const [start, end] = isTurned ? [begin - step, begin] : [begin, begin + step];
    const mean = ((beneath[i] as number) + (beneath[next] as number)) / 2;
    const shared =
      overlap(from, to, start, end) +
      overlap(from, to, start + girth, end + girth) +
      overlap(from, to, start - girth, end - girth);
    if (shared > 0) added += (mean * (turn[i] as number) * shared) / step;
  }
  return to - from + added;
}

const overlap = (from: number, to: number, start: number, end: number): number =>
  Math.max(0, Math.min(to, end) - Math.max(from, start));

/** How far the padded surface lies from the form's axis at the anchor line, for the length of a piece from top to bottom. */
function distanceOut({ outline, beneath }: Height, anchor: Anchor): number {
  let [nearest, least] = [0, Number.POSITIVE_INFINITY];
  for (let i = 0; i < outline.count; i++) {
    const away = Math.abs(fromAnchor(outline.arcLength[i] as number, anchor, outline));
    if (away < least) [nearest, least] = [i, away];
  }
  return Math.hypot(outline.x[nearest] as number, outline.y[nearest] as number) + (beneath[nearest] as number);
}

/** Where an end lies from the nearest line. */
function endPlace(depth: number, lines: readonly NamedLine[]): EndPlace {
  const nearest = lines.reduce((best, line) =>
    Math.abs(line.depth - depth) < Math.abs(best.depth - depth) ? line : best,
  );
  return {
    level: nearest.name,
    distance: mm(Math.abs(depth - nearest.depth)),
    side: depth < nearest.depth ? "above" : "below",
  };
}

/** The batting a cut takes (mm²), as the rectangle it is cut from. */
export function cutArea(cut: LayerCut): number {
  switch (cut.shape) {
    case "bought":
      return 0;
    case "disc":
      return cut.diameter * cut.diameter;
    case "strip":
      return cut.height * Math.max(cut.topWidth, cut.bottomWidth);
    case "panel":
      return cut.height * Math.max(cut.topWidth, cut.bottomWidth, ...cut.widths.map(({ left, right }) => left + right));
  }
}
