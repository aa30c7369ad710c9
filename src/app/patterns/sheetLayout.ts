import { partFrame } from "../../core/pattern/patternPart";
import type { TitledPart } from "./titledPart";

/** Parts on one sheet (mm, y upwards): what is added to each point of a part so that all lie apart, from the lower left corner on. */
export interface Placed {
  readonly parts: readonly { readonly titled: TitledPart; readonly x: number; readonly y: number }[];
  readonly width: number;
  readonly height: number;
}

/** Between parts (mm). */
const gap = 10;

/**
 * Parts in columns from left to right, the widest first, stacked as long as a column is no taller than the sheet: a roll is as tall as
 * it is wide and as wide as it is long, so that a strip lies along it. Grain is kept: nothing is turned.
 */
export function placedBeside(parts: readonly TitledPart[], tallest: number): Placed {
  const framed = parts
    .map((titled) => ({ titled, frame: partFrame(titled.part) }))
    .sort((one, other) => other.frame.width - one.frame.width);
  const placed: { titled: TitledPart; x: number; y: number }[] = [];
  let [left, columnWidth, up, height] = [0, 0, 0, 0];
  for (const { titled, frame } of framed) {
    if (up > 0 && up + frame.height > tallest) {
      left += columnWidth + gap;
      [columnWidth, up] = [0, 0];
    }
    placed.push({ titled, x: left - frame.left, y: up - frame.bottom });
    columnWidth = Math.max(columnWidth, frame.width);
    height = Math.max(height, up + frame.height);
    up += frame.height + gap;
  }
  return { parts: placed, width: left + columnWidth, height };
}
