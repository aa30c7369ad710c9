import { levelNames, type LevelName } from "../../../core/body/vocabulary";
import type { LinePart } from "../../../core/form/linePart";
import { closedPath, segment } from "../pathText";
import { at, type Mark, mark, type Scene } from "../scene";
import { tapeAround } from "./tapeAround";
import { frontTorso, levelTape, sideTorso } from "./torsoFigure";
import type { TorsoShape } from "./torsoShape";

interface ReadLinePicture {
  readonly shape: TorsoShape;
  readonly level: LevelName;
  readonly part: LinePart;
  readonly title: string;
  readonly description: string;
}

/**
 * One reading on the bare form, seen close: the tape all around, the tape from side seam to side seam, or two books that lie
 * flat on the line with the tape straight between them, from the front or, for the depth, from the left side.
 */
export function readLineScene({ shape, level, part, title, description }: ReadLinePicture): Scene {
  const depth = shape.levels[level].depthBelowNape;
  const view = part === "depth" ? "side" : "front";
  const reach = (name: LevelName): readonly number[] => {
    const { half, front, back } = shape.levels[name];
    return view === "front" ? [half] : [front, back];
  };
  const widest = Math.max(...levelNames.flatMap(reach)) + bookWidth + 40;
  const others = levelNames.filter((name) => name !== level);
  const tapes = others.map((name) => levelTape(shape, shape.levels[name].depthBelowNape, view).band);
  return {
    title,
    description,
    frame: { x: -widest, y: depth - widest * 0.62, width: 2 * widest, height: widest * 1.24 },
    textSize: 22,
    marks: [
      ...(view === "front" ? frontTorso(shape) : sideTorso(shape)),
      mark("tapeOn", ...tapes),
      ...(part === "girth" || part === "frontArc"
        ? tapeAround(shape, depth, part === "frontArc")
        : books(sides(shape, level, view), depth)),
    ],
    labels: [],
  };
}

const bookWidth = 62;

/** Where the outline lies at a level, on the left and on the right of the page. */
function sides(shape: TorsoShape, level: LevelName, view: "front" | "side"): readonly [left: number, right: number] {
  const { half, front, back } = shape.levels[level];
  return view === "front" ? [-half, half] : [-front, back];
}

/** Books seen from their ends, spines against the form, and the tape from one to the other in the air before it. */
function books([left, right]: readonly [left: number, right: number], depth: number): readonly Mark[] {
  const box = (from: number, to: number, top: number, bottom: number) =>
    closedPath([at(from, depth + top), at(to, depth + top), at(to, depth + bottom), at(from, depth + bottom)]);
  const pages = (spine: number, way: 1 | -1) =>
    [-6, 0, 6].map((y) => segment(at(spine + way * 8, depth + y), at(spine + way * (bookWidth - 2), depth + y)));
  const ticks = Array.from({ length: 15 }, (_, i) => {
    const x = left + ((right - left) * (i + 1)) / 16;
    return segment(at(x, depth + 24), at(x, depth + (i % 2 === 0 ? 33 : 38)));
  });
  return [
    mark("book", box(right, right + bookWidth, -16, 16), box(left - bookWidth, left, -16, 16)),
    mark("torsoHair", ...pages(right, 1), ...pages(left, -1)),
    mark("tapeNow", box(left - 20, right + 20, 24, 48)),
    mark("tapeTick", ...ticks),
    mark("straight", ...[left, right].map((x) => segment(at(x, depth + 10), at(x, depth + 60)))),
  ];
}
