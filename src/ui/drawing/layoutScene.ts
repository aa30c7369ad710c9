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

/** What lies on a length of something, in one manner for batting and cloth: x across the width, y along the length. */
interface LaidOut {
  readonly width: number;
  readonly length: number;
  readonly shapes: readonly { readonly label: string; readonly outline: readonly PicturePoint[] }[];
  readonly left: BattingSheet["left"];
}

/** Batting from a roll or a packet with every layer where it lies. */
export const battingScenes = (sheet: BattingSheet, words: LayoutWords, letters: number): readonly Scene[] =>
  layoutScenes(sheet, words, letters);

/** The panels of a cover on cloth: as rectangles, since more is left on each than its outline. */
export const clothScene = (
  rows: ClothRows,
  clothWidth: number,
  labels: readonly string[],
  words: LayoutWords,
  letters: number,
): Scene =>
  layoutScenes(
    {
      width: clothWidth,
      length: rows.length,
      shapes: rows.panels.map(({ x, y, width, height }, i) => ({
        label: labels[i] ?? "",
        outline: corners({ x, y, width, height }),
      })),
      left: null,
    },
    words,
    letters,
  )[0] as Scene;

/** A longer roll is shown in so many pictures, one under the other (mm). */
const longestShown = 3600;

/** What is longer, width or length, lies across the picture; a letter is so many times smaller than it. */
function layoutScenes(laid: LaidOut, words: LayoutWords, letters: number): readonly Scene[] {
  const isLong = laid.length > laid.width;
  const [across, down] = isLong ? [laid.length, laid.width] : [laid.width, laid.length];
  const [acrossWords, downWords] = isLong ? [words.length, words.width] : [words.width, words.length];
  const place = ({ x, y }: PicturePoint): PicturePoint => (isLong ? at(y, x) : at(x, y));
  const count = Math.max(1, Math.ceil(across / longestShown));
  const shown = across / count;
  const size = Math.max(shown, down) / letters;
  const left = laid.left === null ? null : corners(laid.left).map(place);
  const marks: readonly Mark[] = [
    mark("torsoPlate", closedPath([at(0, 0), at(across, 0), at(across, down), at(0, down)])),
    ...(left === null ? [] : leftMarks(boxOf(left), size)),
    ...laid.shapes.map(({ outline }) => mark("battingOn", closedPath(outline.map(place)))),
    mark(
      "leader",
      dimension(at(0, down + size), at(across, down + size), size * 0.6),
      dimension(at(across + size, 0), at(across + size, down), size * 0.6),
    ),
  ];
  const labels = [
    ...laid.shapes.map((shape) => label("number", middle(boxOf(shape.outline.map(place))), shape.label)),
    ...(left === null || words.left === null || !hasRoom(boxOf(left), size, words.left)
      ? []
      : [label("name", middle(boxOf(left)), words.left)]),
    label("size", at(shown / 2, down + 2.2 * size), acrossWords),
    label("size", at(across + 1.6 * size, down / 2), downWords, "start"),
  ];
  return Array.from(
    { length: count },
    (_, i): Scene => ({
      title: words.title,
      description: words.description,
      frame: {
        x: i * shown - size,
        y: -size,
        width: shown + (i === count - 1 ? 9 : 2) * size,
        height: down + 4.5 * size,
      },
      textSize: size,
      marks,
      labels,
    }),
  );
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const corners = ({ x, y, width, height }: Box): readonly PicturePoint[] => [
  at(x, y),
  at(x + width, y),
  at(x + width, y + height),
  at(x, y + height),
];

function boxOf(points: readonly PicturePoint[]): Box {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

const middle = ({ x, y, width, height }: Box): PicturePoint => at(x + width / 2, y + height / 2);

/** A letter is about this share of its height wide. */
const letterWidth = 0.62;
const hasRoom = ({ width, height }: Box, size: number, words: string): boolean =>
  height > 1.2 * size && width > words.length * letterWidth * size;

/** What is left over, hatched. */
function leftMarks(box: Box, size: number): readonly Mark[] {
  const { x, y, width, height } = box;
  const step = 1.5 * size;
  const lines = Array.from({ length: Math.floor((width + height) / step) }, (_, i) => {
    const along = (i + 1) * step;
    const from = at(x + Math.max(0, along - height), y + Math.min(height, along));
    const to = at(x + Math.min(width, along), y + Math.max(0, along - width));
    return segment(from, to);
  });
  return [mark("hatch", ...lines), mark("feather", closedPath(corners(box)))];
}
