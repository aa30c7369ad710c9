/**
 * The stretches between neighboring level lines, where edges may lie, and those above the first and below the last line. The tape
 * runs on the lines, and hands place an edge within some millimeters: so an edge stays away from every line, and a whole,
 * known number of layers lies under the tape.
 */
export interface Gap {
  /** From line to line (mm); beyond the outermost lines as far as padding may reach, and the margin. */
  readonly length: number;
  /** The last stretch of a layer that is feathered here (mm); zero is cut square. */
  readonly feather: number;
  /** What an edge keeps from a line it lies outside of (mm); inside it keeps the feather as well. */
  readonly margin: number;
  /** Where edges may lie: this long, from feather and margin beyond the line that is covered on (mm). */
  readonly room: number;
}

/** The last 10 mm (3/8 in) of a layer are feathered: more comes out otherwise in every hand. */
export const featherLength = 10;

/** Half a tape's width and some placement (mm). */
const fullMargin = 12;

/** How far padding may reach above the first and below the last line (mm): to the armhole, and near the form's edge. */
export const reachBeyond = { above: 70, below: 80 } as const;

/** The gaps from above the first line to below the last: one more than there are lines. */
export function levelGaps(depths: readonly number[]): readonly Gap[] {
  const between = depths.slice(1).map((depth, i) => gapOf(depth - (depths[i] as number)));
  return [gapOf(reachBeyond.above + fullMargin), ...between, gapOf(reachBeyond.below + fullMargin)];
}

function gapOf(length: number): Gap {
  const feather = Math.max(0, Math.min(featherLength, length - 2 * fullMargin));
  const margin = Math.min(fullMargin, (length - feather) / 2);
  return { length, feather, margin, room: Math.max(0, length - 2 * margin - feather) };
}

/** The nearest and the farthest that an edge in this gap may lie from the line it covers (mm). */
export const nearestEdge = ({ feather, margin }: Gap): number => feather + margin;
export const farthestEdge = ({ length, margin }: Gap): number => length - margin;

/** No layer is lower than this (mm), so that a hand can place and pin it. */
export const leastHeight = 60;

/** The tallest that a layer over the lines from `first` to `last` can be (mm). */
export function tallest(depths: readonly number[], gaps: readonly Gap[], first: number, last: number): number {
  const between = (depths[last] as number) - (depths[first] as number);
  return farthestEdge(gaps[first] as Gap) + between + farthestEdge(gaps[last + 1] as Gap);
}
