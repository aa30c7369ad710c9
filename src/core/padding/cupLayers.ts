import { mm } from "../units";
import type { CupPlace } from "./cupPlace";
import type { LaidPiece } from "./laidPiece";
import type { Layer, LayerRow } from "./layer";
import { featherLength } from "./levelGaps";
import type { Shape } from "./searchShape";

/** A disc is cut straight at its top and bottom, where it is this wide (mm): less would hold no pin. */
const narrowestRow = 40;

/** The cup pads of a shape, the left one first; the largest disc lies against the cup. */
export function cupLayers({ cups, discs }: Pick<Shape, "cups" | "discs">, thickness: number): readonly LaidPiece[] {
  if (discs === 0) return [];
  return (["left", "right"] as const).map((side) => ({
    kind: "cup",
    zone: side === "left" ? "leftCup" : "rightCup",
    anchor: "centerFront",
    // From the form outwards: the largest is the outermost.
    layers: cups[side].radii
      .slice(0, discs)
      .toReversed()
      .map(
        (radius): Layer => ({
          batting: "building",
          thickness: mm(thickness),
          feather: mm(featherLength),
          wrap: false,
          rows: discRows(cups[side], radius, side === "left" ? 1 : -1),
        }),
      ),
  }));
}

function discRows({ fromFront, depth }: CupPlace, radius: number, sign: 1 | -1): readonly LayerRow[] {
  const steps = 2 * Math.ceil(radius / 8);
  const half = Math.acos(narrowestRow / 2 / radius);
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = half * ((2 * i) / steps - 1);
    const reach = radius * Math.cos(angle);
    return {
      depthBelowNape: mm(depth + radius * Math.sin(angle)),
      start: mm(sign * fromFront - reach),
      end: mm(sign * fromFront + reach),
    };
  });
}
