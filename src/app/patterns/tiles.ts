import {
  type FlatPoint,
  partFrame,
  type PartFrame,
  type PatternPart,
  partOutline,
} from "../../core/pattern/patternPart";

/** What every printer prints on either size of paper, in millimeters, and how far a page runs under the next one. */
export const tileWidth = 190;
export const tileHeight = 254;
export const overlap = 10;

/** From one page to the next (mm). */
export const stepAcross = tileWidth - overlap;
export const stepDown = tileHeight - overlap;

/** A page of a part: its lower left corner on the part (mm, y upwards), its row from the top and its column from the left, from 0. */
export interface Tile {
  readonly row: number;
  readonly column: number;
  readonly left: number;
  readonly bottom: number;
}

/** The pages a part takes, row by row from its top left corner; pages that nothing is drawn on are left out. */
export interface Tiling {
  readonly frame: PartFrame;
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
}

/** Around a part, so that no line lies on the edge of the paper (mm). */
const margin = 3;

export function tilesOf(part: PatternPart): Tiling {
  const bare = partFrame(part);
  const frame = {
    left: bare.left - margin,
    bottom: bare.bottom - margin,
    width: bare.width + 2 * margin,
    height: bare.height + 2 * margin,
  };
  const columns = Math.max(1, Math.ceil((frame.width - overlap) / stepAcross));
  const rows = Math.max(1, Math.ceil((frame.height - overlap) / stepDown));
  const top = frame.bottom + frame.height;
  const all = Array.from({ length: rows * columns }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    return { row, column, left: frame.left + column * stepAcross, bottom: top - row * stepDown - tileHeight };
  });
  return { frame, rows, columns, tiles: all.filter((tile) => !isClear(part, { ...tile, ...wholePage })) };
}

const wholePage = { width: tileWidth, height: tileHeight };

/** Whether nothing of a part is drawn within a rectangle on it. */
export const isClear = (part: PatternPart, frame: PartFrame): boolean =>
  ![...closed(partOutline(part)), ...part.lines.flatMap(({ points }) => pairs(points))].some((pair) =>
    crosses(pair, frame),
  );

type Pair = readonly [FlatPoint, FlatPoint];

const pairs = (points: readonly FlatPoint[]): readonly Pair[] =>
  points.slice(1).map((point, i) => [points[i] as FlatPoint, point]);

const closed = (points: readonly FlatPoint[]): readonly Pair[] => pairs([...points, points[0] as FlatPoint]);

/** Whether some of a straight line lies in a rectangle: it is cut by each of the four sides in turn. */
function crosses([from, to]: Pair, { left, bottom, width, height }: PartFrame): boolean {
  let [start, end] = [0, 1];
  const cutBy = (away: number, change: number): void => {
    if (change === 0) {
      if (away < 0) start = 2;
      return;
    }
    const at = -away / change;
    if (change > 0) start = Math.max(start, at);
    else end = Math.min(end, at);
  };
  const [acrossBy, upBy] = [to.x - from.x, to.y - from.y];
  cutBy(from.x - left, acrossBy);
  cutBy(left + width - from.x, -acrossBy);
  cutBy(from.y - bottom, upBy);
  cutBy(bottom + height - from.y, -upBy);
  return start <= end;
}

/** Rows by letter and columns by number, as on the map: A1 is at the top left. */
export const tileName = ({ row, column }: Pick<Tile, "row" | "column">): string => `${rowLetters(row)}${column + 1}`;

function rowLetters(row: number): string {
  const letter = String.fromCharCode(65 + (row % 26));
  return row < 26 ? letter : `${rowLetters(Math.floor(row / 26) - 1)}${letter}`;
}
