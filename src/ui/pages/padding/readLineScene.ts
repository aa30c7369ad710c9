import type { LinePart } from "../../../app/linesAtForm";
import { levelNames, type LevelName } from "../../../core/body/vocabulary";
import { closedPath, segment } from "../../drawing/pathText";
import { at } from "../../drawing/picturePoint";
import { type Mark, mark, type Scene } from "../../drawing/scene";
import { frontTorso } from "../../drawing/torso/frontTorso";
import { levelTape } from "../../drawing/torso/levelTape";
import type { TorsoShape } from "../../drawing/torso/torsoShape";

export interface ReadLinePicture {
  readonly shape: TorsoShape;
  readonly level: LevelName;
  readonly part: LinePart;
  readonly title: string;
  readonly description: string;
}

/**
 * One reading on the bare form, seen close: the tape all around, the tape from side seam to side seam, or two books that lie
 * flat on the line with the tape straight between them.
 */
export function readLineScene({ shape, level, part, title, description }: ReadLinePicture): Scene {
  const depth = shape.levels[level].depthBelowNape;
  const half = shape.levels[level].half;
  const widest = Math.max(...levelNames.map((name) => shape.levels[name].half)) + bookWidth + 40;
  const frame = { x: -widest, y: depth - widest * 0.62, width: 2 * widest, height: widest * 1.24 };
  const others = levelNames.filter((name) => name !== level);
  return {
    title,
    description,
    frame,
    textSize: 22,
    marks: [
      ...frontTorso(shape),
      mark("tapeOn", ...others.map((name) => levelTape(shape, shape.levels[name].depthBelowNape, "front").band)),
      ...(part === "breadth" ? books(half, depth) : tapeAround(shape, depth, part)),
    ],
    labels: [],
  };
}

const bookWidth = 62;

function tapeAround(shape: TorsoShape, depth: number, part: "girth" | "frontArc"): readonly Mark[] {
  const tape = levelTape(shape, depth, "front", 24);
  const half = shape.half(depth);
  const seam = (side: 1 | -1) => segment(at(side * (half - 1), depth - 26), at(side * (half - 1), depth + 50));
  return [
    mark("tapeNow", tape.band),
    mark("tapeTick", tape.ticks),
    mark("straight", ...(part === "frontArc" ? [seam(1), seam(-1)] : [])),
  ];
}

/** Books seen from their ends, spines against the form, and the tape from one to the other in the air before it. */
function books(half: number, depth: number): readonly Mark[] {
  const book = (side: 1 | -1) =>
    closedPath([
      at(side * half, depth - 16),
      at(side * (half + bookWidth), depth - 16),
      at(side * (half + bookWidth), depth + 16),
      at(side * half, depth + 16),
    ]);
  const pages = (side: 1 | -1) =>
    [-6, 0, 6].map((y) => segment(at(side * (half + 8), depth + y), at(side * (half + bookWidth - 2), depth + y)));
  const ticks = Array.from({ length: 15 }, (_, i) => {
    const x = -half + (2 * half * (i + 1)) / 16;
    return segment(at(x, depth + 24), at(x, depth + (i % 2 === 0 ? 33 : 38)));
  });
  return [
    mark("book", book(1), book(-1)),
    mark("torsoHair", ...pages(1), ...pages(-1)),
    mark(
      "tapeNow",
      closedPath([
        at(-half - 20, depth + 24),
        at(half + 20, depth + 24),
        at(half + 20, depth + 48),
        at(-half - 20, depth + 48),
      ]),
    ),
    mark("tapeTick", ...ticks),
    mark(
      "straight",
      segment(at(-half, depth + 10), at(-half, depth + 60)),
      segment(at(half, depth + 10), at(half, depth + 60)),
    ),
  ];
}
