import { type ByLevel, type LevelName, levelNames, mapLevels } from "../../../core/body/vocabulary";
import { circle, closedPath, segment } from "../pathText";
import { at, label, type Label, type Mark, mark, movedRight, type Scene } from "../scene";
import { frontTorso, levelTape, sideTorso } from "./torsoFigure";
import { napeBack, type TorsoShape } from "./torsoShape";

/**
 * How a level line is marked on the form: front and left side with a narrow tape on each line that is done, and beside the
 * form an upright stick with a pointer at the height of the line at hand, past which the form is turned.
 */
export interface MarkPicture {
  readonly shape: TorsoShape;
  readonly now: LevelName;
  readonly marked: readonly LevelName[];
  /** What stands beside each line: its distance below the nape, in the reader's unit; nothing while figures are covered. */
  readonly distances: { readonly [level in LevelName]: string } | null;
  /** On a narrow screen the front view is left off. */
  readonly isNarrow?: boolean;
  /** How high its letters are (mm of the drawing); larger where it is seen from further away. */
  readonly textSize?: number;
  readonly words: MarkPictureWords;
}

interface MarkPictureWords {
  readonly title: string;
  readonly description: string;
  readonly front: string;
  readonly leftSide: string;
  readonly nape: string;
  readonly levels: { readonly [level in LevelName]: string };
}

export function markScene(picture: MarkPicture): Scene {
  const { shape, now, marked, words, textSize: size = 26, isNarrow = false } = picture;
  const bottom = shape.hem + 96;
  const { left, side, stick } = placesAcross(shape, isNarrow);
  const frame = { x: left, y: -104, width: stick + 12.6 * size + 20 - left, height: bottom + 104 };
  const right = frame.x + frame.width - 6;
  const heights = labelHeights(shape, now, size);
  const half = bandHalf * size;
  const { depthBelowNape } = shape.levels[now];
  return {
    title: words.title,
    description: words.description,
    frame,
    textSize: size,
    marks: [
      ...(isNarrow ? [] : [...frontTorso(shape), ...linesOn(shape, "front", now, marked)]),
      ...movedRight(side, [...sideTorso(shape), ...linesOn(shape, "side", now, marked)]),
      ...stickMarks(shape, stick, depthBelowNape, side, left, bottom),
      mark("tapeNow", closedPath(band(stick + 26, right, heights[now], half))),
      mark(
        "leader",
        segment(at(side + napeBack + 4, 0), at(right, 0)),
        ...levelNames.map((name) =>
          segment(at(stick + 12, shape.levels[name].depthBelowNape), at(stick + 28, heights[name])),
        ),
      ),
    ],
    labels: [
      ...(isNarrow ? [] : [label("quiet", at(-24, bottom - 22), words.front, "end")]),
      ...(isNarrow ? [] : [label("quiet", at(side - 24, bottom - 22), words.leftSide, "end")]),
      label("name", at(right, -size * 0.75), words.nape, "end"),
      ...levelNames.flatMap((name) => lineLabels(picture, name, heights[name], stick + 36, right - 12)),
    ],
  };
}

/** Where the left edge, the middle of the side view and the stick lie across the page; narrow, the front view is left off. */
function placesAcross({ levels, shoulderHalf }: TorsoShape, isNarrow: boolean) {
  const most = (part: "half" | "front" | "back") => Math.max(...levelNames.map((name) => levels[name][part]));
  const front = Math.max(64, most("front"));
  const widest = Math.max(shoulderHalf + 4, most("half"));
  const left = isNarrow ? -front - 14 : -widest - 14;
  const side = isNarrow ? 0 : widest + 40 + front;
  return { left, side, stick: side + Math.max(napeBack, most("back")) + 46 };
}

/** The band of the line at hand is so much of the letters' height to each side of its middle. */
const bandHalf = 1.05;

/** The words of a line stand at its height, or as far above or below as the band at hand and their neighbors need. */
function labelHeights({ levels }: TorsoShape, now: LevelName, size: number): ByLevel<number> {
  const heights = new Map<LevelName, number>([[now, levels[now].depthBelowNape]]);
  const at = levelNames.indexOf(now);
  const apart = (name: LevelName) => (name === now ? bandHalf + 0.6 : 1.2) * size;
  const push = (names: readonly LevelName[], way: 1 | -1) => {
    let last = now;
    for (const name of names) {
      const nearest = (heights.get(last) ?? 0) + way * apart(last);
      const own = levels[name].depthBelowNape;
      heights.set(name, way * (own - nearest) < 0 ? nearest : own);
      last = name;
    }
  };
  push(levelNames.slice(0, at).toReversed(), -1);
  push(levelNames.slice(at + 1), 1);
  return mapLevels((name) => heights.get(name) ?? levels[name].depthBelowNape);
}

function lineLabels(
  { now, marked, distances, words }: MarkPicture,
  name: LevelName,
  y: number,
  from: number,
  to: number,
): readonly Label[] {
  const isNow = name === now;
  const done = marked.includes(name) && !isNow ? " ✓" : "";
  const distance = distances === null ? "" : `${distances[name]}${done}`;
  return [
    ...(distance === "" ? [] : [label(isNow ? "atHand" : "number", at(from, y), distance, "start")]),
    label(isNow ? "onTape" : "name", at(to, y), words.levels[name], "end"),
  ];
}

const band = (from: number, to: number, y: number, half: number) => [
  at(from, y - half),
  at(to, y - half),
  at(to, y + half),
  at(from, y + half),
];

/** Tapes on the lines that are marked, the one at hand in yellow, and dots where the others will be. */
function linesOn(
  shape: TorsoShape,
  view: "front" | "side",
  now: LevelName,
  marked: readonly LevelName[],
): readonly Mark[] {
  const tape = (name: LevelName) => levelTape(shape, shape.levels[name].depthBelowNape, view);
  const isDone = (name: LevelName) => marked.includes(name) && name !== now;
  const rest = levelNames.filter((name) => !isDone(name) && name !== now);
  return [
    mark("levelLine", ...rest.map((name) => tape(name).line)),
    mark("tapeOn", ...levelNames.filter(isDone).map((name) => tape(name).band)),
    mark("tapeNow", tape(now).band),
  ];
}

/** A stick that stands beside the form, and its pointer that touches the back at the line. */
function stickMarks(
  shape: TorsoShape,
  x: number,
  depth: number,
  side: number,
  left: number,
  bottom: number,
): readonly Mark[] {
  const touch = side + shape.back(depth) + 2;
  return [
    mark(
      "tapeOn",
      closedPath([at(x - 26, bottom - 14), at(x + 38, bottom - 14), at(x + 38, bottom - 2), at(x - 26, bottom - 2)]),
      closedPath([at(x, -40), at(x + 12, -40), at(x + 12, bottom - 14), at(x, bottom - 14)]),
      closedPath([at(touch, depth - 6), at(x + 18, depth - 6), at(x + 18, depth + 6), at(touch, depth)]),
    ),
    mark("dot", circle(at(x + 6, depth), 4)),
    mark("ground", segment(at(left + 10, bottom - 2), at(x + 60, bottom - 2))),
  ];
}
