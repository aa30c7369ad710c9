import { segment } from "../pathText";
import { at, type Mark, mark } from "../scene";
import { levelTape } from "./torsoFigure";
import type { TorsoShape } from "./torsoShape";

/** The tape in hand around a level, seen from the front; from side seam to side seam both seams are marked. */
export function tapeAround(shape: TorsoShape, depth: number, isSeamToSeam: boolean): readonly Mark[] {
  const tape = levelTape(shape, depth, "front", 24);
  const half = shape.half(depth);
  const seam = (side: 1 | -1) => segment(at(side * (half - 1), depth - 26), at(side * (half - 1), depth + 50));
  return [
    mark("tapeNow", tape.band),
    mark("tapeTick", tape.ticks),
    mark("straight", ...(isSeamToSeam ? [seam(1), seam(-1)] : [])),
  ];
}
