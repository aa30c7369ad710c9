import type { LevelName } from "../../core/body/vocabulary";
import type { EndPlace, LayerCut } from "../../core/padding/layerCut";
import { mm, type Millimetres } from "../../core/units";

/** A layer that is cut flat: not a disc, and not bought. */
export type FlatCut = Extract<LayerCut, { readonly shape: "strip" | "panel" }>;

/**
 * One width of a cut as it is drawn: how far it reaches to the wearer's left and right of the anchor line so far below its top
 * edge. Where a level line crosses it the width is written; at its two ends their place from the nearest line.
 */
export interface CutWidth {
  readonly belowTop: Millimetres;
  readonly left: Millimetres;
  readonly right: Millimetres;
  readonly at: { readonly line: LevelName } | { readonly end: EndPlace };
}

/** The widths of a cut from its top edge to its bottom edge. Both ends share the sides of the line nearest to them. */
export function cutOutline({ height, top, bottom, topWidth, bottomWidth, widths }: FlatCut): readonly CutWidth[] {
  const shared = (width: number, like: FlatCut["widths"][number] | undefined) => {
    const whole = like === undefined ? 0 : like.left + like.right;
    const share = like === undefined || whole === 0 ? 0.5 : like.left / whole;
    return { left: mm(width * share), right: mm(width * (1 - share)) };
  };
  return [
    { belowTop: mm(0), ...shared(topWidth, widths[0]), at: { end: top } },
    ...widths.map(({ level, belowTop, left, right }): CutWidth => ({ belowTop, left, right, at: { line: level } })),
    { belowTop: height, ...shared(bottomWidth, widths[widths.length - 1]), at: { end: bottom } },
  ];
}

/** Both sides alike to a millimeter and a half. */
export const isEven = (widths: readonly CutWidth[]): boolean =>
  widths.every(({ left, right }) => Math.abs(left - right) <= evenWithin);
const evenWithin = 3;
