import type { LevelName } from "../body/vocabulary";
import { type Millimetres, mm } from "../units";
import type { EndPlace, LayerCut } from "./layerCut";

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
  /** What is written there: of a strip, which is cut with straight edges, its width once the darts there are taken in. */
  readonly written: Pick<FlatCut["widths"][number], "left" | "right">;
  readonly at: { readonly line: LevelName } | { readonly end: EndPlace };
}

/** The widths of a cut from its top edge to its bottom edge. Both ends share the sides of the line nearest to them. */
export function cutOutline(cut: FlatCut): readonly CutWidth[] {
  const { height, top, bottom, topWidth, bottomWidth, widths, shape } = cut;
  const straight = (belowTop: number): CutWidth["written"] => {
    const half = mm((topWidth + ((bottomWidth - topWidth) * belowTop) / height) / 2);
    return { left: half, right: half };
  };
  const shared = (width: number, like: FlatCut["widths"][number] | undefined) => {
    const whole = like === undefined ? 0 : like.left + like.right;
    const share = like === undefined || whole === 0 ? 0.5 : like.left / whole;
    return { left: mm(width * share), right: mm(width * (1 - share)) };
  };
  return [
    edge(mm(0), shared(topWidth, widths[0]), top),
    ...widths.map(({ level, belowTop, left, right }): CutWidth => {
      const written = { left, right };
      return { belowTop, ...(shape === "strip" ? straight(belowTop) : written), written, at: { line: level } };
    }),
    edge(height, shared(bottomWidth, widths[widths.length - 1]), bottom),
  ];
}

const edge = (belowTop: Millimetres, sides: CutWidth["written"], end: EndPlace): CutWidth => ({
  belowTop,
  ...sides,
  written: sides,
  at: { end },
});

/** Both sides alike to a millimeter and a half. */
export const isEven = (widths: readonly CutWidth[]): boolean =>
  widths.every(({ written: { left, right } }) => Math.abs(left - right) <= evenWithin);
const evenWithin = 3;
