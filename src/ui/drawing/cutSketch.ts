import { cutOutline } from "../../core/padding/cutOutline";
import type { LayerCut } from "../../core/padding/layerCut";
import type { Piece } from "../../core/padding/piece";
import { circle, closedPath, segment } from "./pathText";
import { at, mark, type Scene } from "./scene";

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
