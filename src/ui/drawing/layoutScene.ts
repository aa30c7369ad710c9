import type { BattingSheet } from "../../app/supplies/battingLayout";
import type { ClothRows } from "../../core/supplies/clothRows";
import { closedPath, dimension, segment } from "./pathText";
import { at, label, type Mark, mark, type PicturePoint, type Scene } from "./scene";

/** What is written on the picture of a layout. */
export interface LayoutWords {
  readonly title: string;
  readonly description: string;
  readonly width: string;
  readonly length: string;
  readonly left: string | null;
}

/** What lies on a length of something, in one manner for batting and cloth: the length runs to the right, the width down. */
interface LaidOut {
  readonly width: number;
  readonly length: number;
  readonly shapes: readonly { readonly label: string; readonly outline: readonly PicturePoint[] }[];
  readonly left: BattingSheet["left"];
}

/** Batting from a roll or a packet with every layer where it lies. */
export const battingScenes = (sheet: BattingSheet, words: LayoutWords): readonly Scene[] => layoutScenes(sheet, words);

/** The panels of a cover on cloth: as rectangles, since more is left on each than its outline. */
export const clothScene = (rows: ClothRows, clothWidth: number, labels: readonly string[], words: LayoutWords): Scene =>
  layoutScenes(
    {
      width: clothWidth,
      length: rows.length,
      shapes: rows.panels.map(({ x, y, width, height }, i) => ({
        label: labels[i] ?? "",
        outline: [at(x, y), at(x + width, y), at(x + width, y + height), at(x, y + height)],
      })),
      left: null,
    },
    words,
  )[0] as Scene;

/** A longer roll is shown in so many pictures, one under the other (mm). */
const longestShown = 3600;

function layoutScenes(laid: LaidOut, words: LayoutWords): readonly Scene[] {
  const count = Math.max(1, Math.ceil(laid.length / longestShown));
  const shown = laid.length / count;
  const size = Math.max(shown, 1.3 * laid.width) / 34;
  const { width, length } = laid;
  const marks: readonly Mark[] = [
    mark("torsoPlate", closedPath([at(0, 0), at(length, 0), at(length, width), at(0, width)])),
    ...(laid.left === null ? [] : leftMarks(laid.left, size)),
    ...laid.shapes.map(({ outline }) => mark("battingOn", closedPath(outline.map(turned)))),
    mark(
      "leader",
      dimension(at(0, width + size), at(length, width + size), size * 0.6),
      dimension(at(length + size, 0), at(length + size, width), size * 0.6),
    ),
  ];
  const labels = [
    ...laid.shapes.map((shape) => label("number", middle(shape.outline.map(turned)), shape.label)),
    ...(laid.left === null || words.left === null
      ? []
      : [label("name", at(laid.left.y + laid.left.height / 2, laid.left.x + laid.left.width / 2), words.left)]),
    label("size", at(shown / 2, width + 2.2 * size), words.length),
    label("size", at(length + 1.6 * size, width / 2), words.width, "start"),
  ];
  return Array.from({ length: count }, (_, i): Scene => {
    const isLast = i === count - 1;
    return {
      title: words.title,
      description: words.description,
      frame: {
        x: i * shown - size,
        y: -size,
        width: shown + (isLast ? 6 * size : 2 * size),
        height: width + 4.5 * size,
      },
      textSize: size,
      marks,
      labels,
    };
  });
}

const turned = ({ x, y }: PicturePoint): PicturePoint => at(y, x);

function middle(outline: readonly PicturePoint[]): PicturePoint {
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  return at((Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2);
}

/** What is left over, hatched. */
function leftMarks({ x, y, width, height }: NonNullable<BattingSheet["left"]>, size: number): readonly Mark[] {
  const step = 1.5 * size;
  const lines = Array.from({ length: Math.floor((width + height) / step) }, (_, i) => {
    const along = (i + 1) * step;
    const from = at(y + Math.max(0, along - width), x + Math.min(width, along));
    const to = at(y + Math.min(height, along), x + Math.max(0, along - height));
    return segment(from, to);
  });
  return [
    mark("hatch", ...lines),
    mark("feather", closedPath([at(y, x), at(y + height, x), at(y + height, x + width), at(y, x + width)])),
  ];
}
