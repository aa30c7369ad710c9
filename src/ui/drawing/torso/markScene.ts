import { type LevelName, levelNames } from "../../../core/body/vocabulary";
import { circle, closedPath, segment } from "../pathText";
import { at } from "../picturePoint";
import { label, type Label, type Mark, mark, movedRight, type Scene } from "../scene";
import { frontTorso } from "./frontTorso";
import { levelTape } from "./levelTape";
import { sideTorso } from "./sideTorso";
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
  /** How high its letters are (mm of the drawing); larger where it is seen from further away. */
  readonly textSize?: number;
  readonly words: MarkPictureWords;
}

export interface MarkPictureWords {
  readonly title: string;
  readonly description: string;
  readonly front: string;
  readonly leftSide: string;
  readonly nape: string;
  readonly levels: { readonly [level in LevelName]: string };
}

export function markScene({ shape, now, marked, distances, words, textSize: size = 26 }: MarkPicture): Scene {
  const bottom = shape.hem + 96;
  const top = -104;
  const widest = Math.max(shape.shoulderHalf + 4, ...levelNames.map((name) => shape.levels[name].half));
  const side = widest + 40 + Math.max(...levelNames.map((name) => shape.levels[name].front));
  const stick = side + Math.max(napeBack, ...levelNames.map((name) => shape.levels[name].back)) + 46;
  const frame = { x: -widest - 14, y: top, width: stick + 14.4 * size + widest + 14, height: bottom - top };
  const right = frame.x + frame.width - 6;
  return {
    title: words.title,
    description: words.description,
    frame,
    textSize: size,
    marks: [
      ...frontTorso(shape),
      ...linesOn(shape, "front", now, marked),
      ...movedRight(side, [...sideTorso(shape), ...linesOn(shape, "side", now, marked)]),
      ...stickMarks(shape, stick, shape.levels[now].depthBelowNape, side, bottom),
      mark("tapeNow", closedPath(band(stick + 26, right, shape.levels[now].depthBelowNape, 0.88 * size))),
      mark("leader", segment(at(side + napeBack + 4, 0), at(right, 0))),
    ],
    labels: [
      label("quiet", at(0, bottom - 24), words.front, "middle"),
      label("quiet", at(side, bottom - 24), words.leftSide, "middle"),
      label("place", at(right, -size * 0.8), words.nape, "end"),
      ...levelNames.flatMap((name) => lineLabels(shape, name, { now, marked, distances, words }, stick + 36, right)),
    ],
  };
}

function lineLabels(
  shape: TorsoShape,
  name: LevelName,
  { now, marked, distances, words }: Pick<MarkPicture, "now" | "marked" | "distances" | "words">,
  from: number,
  to: number,
): readonly Label[] {
  const y = shape.levels[name].depthBelowNape;
  const done = marked.includes(name) && name !== now ? " ✓" : "";
  const role = name === now ? "onTape" : "number";
  return [
    ...(distances === null ? [] : [label(role, at(from, y), `${distances[name]}${done}`, "start")]),
    label(name === now ? "onTape" : "place", at(to - 4, y), words.levels[name], "end"),
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
function stickMarks(shape: TorsoShape, x: number, depth: number, side: number, bottom: number): readonly Mark[] {
  const touch = side + shape.back(depth) + 2;
  return [
    mark(
      "tapeOn",
      closedPath([at(x - 26, bottom - 14), at(x + 38, bottom - 14), at(x + 38, bottom - 2), at(x - 26, bottom - 2)]),
      closedPath([at(x, -40), at(x + 12, -40), at(x + 12, bottom - 14), at(x, bottom - 14)]),
      closedPath([at(touch, depth - 6), at(x + 18, depth - 6), at(x + 18, depth + 6), at(touch, depth)]),
    ),
    mark("dot", circle(at(x + 6, depth), 4)),
    mark("ground", segment(at(-150, bottom - 2), at(x + 60, bottom - 2))),
  ];
}
