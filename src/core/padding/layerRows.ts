import { mm } from "../units";
import type { EdgePlaces } from "./edgePlaces";
import type { LayerRow } from "./layer";
import { type Gap, nearestEdge } from "./levelGaps";

/** How far a layer reaches to the wearer's left and right of its anchor at each level it covers, from the first on (mm). */
export interface LevelWidths {
  readonly left: readonly number[];
  readonly right: readonly number[];
}

/** Rows of a layer lie at most this far apart (mm). */
const rowGap = 20;

/** A change of width takes at least this much height (mm). */
const steepest = 1;

/**
 * The outline of a layer over levels from `first` on. Between two levels a width changes where an edge may lie, as if what is
 * wider at one were a layer of its own that ends there: near each line it stays as it is at the line.
 */
export function layerRows(
  { top, bottom }: EdgePlaces,
  first: number,
  { left, right }: LevelWidths,
  depths: readonly number[],
  gaps: readonly Gap[],
): readonly LayerRow[] {
  const lines = depths.slice(first, first + left.length);
  const corners = lines.slice(1).flatMap((line, i) => {
    const [above, gap] = [lines[i] as number, gaps[first + i + 1] as Gap];
    return [above + gap.margin, above + nearestEdge(gap), line - nearestEdge(gap), line - gap.margin].flatMap(
      (corner) => [corner - steepest / 2, corner + steepest / 2],
    );
  });
  const stops = [top, ...lines, ...corners, bottom].filter((depth) => depth >= top && depth <= bottom);
  return filledDepths(distinct(stops)).map((depth) => ({
    depthBelowNape: mm(depth),
    start: mm(-widthAt(depth, right, lines, gaps, first)),
    end: mm(widthAt(depth, left, lines, gaps, first)),
  }));
}

/** Depths in order, those closer than a change of width is high taken as one. */
function distinct(depths: readonly number[]): readonly number[] {
  const sorted = [...depths].sort((a, b) => a - b);
  const last = sorted[sorted.length - 1] as number;
  const kept = sorted.filter((depth, i) => i === 0 || depth - (sorted[i - 1] as number) >= steepest / 2);
  return [...kept.slice(0, -1), last];
}

/** The depths with others between them, so that no two lie further apart than rows may. */
export function filledDepths(depths: readonly number[]): readonly number[] {
  return depths.flatMap((depth, i) => {
    const before = depths[i - 1];
    if (before === undefined) return [depth];
    const steps = Math.ceil((depth - before) / rowGap);
    return Array.from({ length: steps }, (_, step) => before + ((depth - before) * (step + 1)) / steps);
  });
}

function widthAt(
  depth: number,
  widths: readonly number[],
  lines: readonly number[],
  gaps: readonly Gap[],
  first: number,
): number {
  const below = lines.findIndex((line) => line >= depth);
  if (below === 0) return widths[0] as number;
  if (below === -1) return widths[widths.length - 1] as number;
  const [from, to] = [widths[below - 1] as number, widths[below] as number];
  const [above, line, gap] = [lines[below - 1] as number, lines[below] as number, gaps[first + below] as Gap];
  const isNarrowing = from > to;
  const [fromLine, toLine] = isNarrowing ? [nearestEdge(gap), gap.margin] : [gap.margin, nearestEdge(gap)];
  const [begin, end] = [above + fromLine, line - toLine];
  const middle = (begin + end) / 2;
  const [start, stop] = [Math.min(begin, middle - steepest / 2), Math.max(end, middle + steepest / 2)];
  return from + (to - from) * Math.max(0, Math.min(1, (depth - start) / (stop - start)));
}
