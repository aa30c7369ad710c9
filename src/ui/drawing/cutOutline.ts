import type { LevelName } from "../../core/body/vocabulary";
import type { EndPlace, LayerCut } from "../../core/padding/layerCut";
import type { Piece } from "../../core/padding/piece";
import { type Millimetres, mm } from "../../core/units";
import { circle, closedPath, segment } from "./pathText";
import { at, mark, type Scene } from "./scene";

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

/** The layers of a piece one inside the other, without a figure: what it looks like on the table, beside the words that give its sizes. */
export function cutSketch({ cut }: Pick<Piece, "cut">, title: string): Scene {
  const shapes = cut.filter((one) => one.shape !== "bought");
  const largest = shapes.reduce<LayerCut | null>(
    (best, one) => (best === null || areaOf(one) > areaOf(best) ? one : best),
    null,
  );
  const [width, height] = largest === null ? [100, 20] : sizeOf(largest);
  const edge = Math.max(width, height) * 0.04;
  return {
    title,
    description: "",
    frame: { x: -width / 2 - edge, y: -height / 2 - edge, width: width + 2 * edge, height: height + 2 * edge },
    textSize: edge,
    marks: [
      mark("layer", largest === null ? "" : outlineOf(largest)),
      mark("feather", ...shapes.filter((one) => one !== largest).map(outlineOf)),
      mark("centre", segment(at(0, -height / 2), at(0, height / 2))),
    ],
    labels: [],
  };
}

function outlineOf(cut: LayerCut): string {
  if (cut.shape === "bought") return "";
  if (cut.shape === "disc") return circle(at(0, 0), cut.diameter / 2);
  const rows = cutOutline(cut);
  const down = cut.height / 2;
  return closedPath([
    ...rows.map(({ left, belowTop }) => at(left, belowTop - down)),
    ...rows.toReversed().map(({ right, belowTop }) => at(-right, belowTop - down)),
  ]);
}

function sizeOf(cut: LayerCut): readonly [width: number, height: number] {
  if (cut.shape === "bought") return [0, 0];
  if (cut.shape === "disc") return [cut.diameter, cut.diameter];
  const widest = Math.max(...cutOutline(cut).map(({ left, right }) => Math.max(left, right)));
  return [2 * widest, cut.height];
}

const areaOf = (cut: LayerCut): number => sizeOf(cut).reduce((one, other) => one * other);
