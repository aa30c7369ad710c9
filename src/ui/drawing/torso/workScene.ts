import { levelNames, type LevelName } from "../../../core/body/vocabulary";
import { type Piece, pieceExtent } from "../../../core/padding/piece";
import type { PlannedLevel } from "../../../core/plan/plan";
import { bodyCurveOf, formCurveOf } from "../../../core/plan/torsosOfPlan";
import type { PaddedSection } from "../../../core/surface/paddedSection";
import type { SectionAt } from "../../../core/body/torsoCurve";
import type { FigureView } from "../figureView";
import { bodyMarks } from "../figureScene";
import { pieceOnFigure } from "../pieceOnFigure";
import { figureSections, silhouette } from "../silhouette";
import { closedPath, segment } from "../pathText";
import { at, type Frame, label, type Label, type Mark, mark, type PicturePoint, type Scene } from "../scene";
import { battingPath, fibersAlong, pinsAlong, stitchesInside } from "./battingMarks";
import { tapeAround } from "./tapeAround";
import { frontTorso, levelTape, sideTorso } from "./torsoFigure";
import { paddedShape } from "./paddedShape";
import { formTorso, type TorsoShape } from "./torsoShape";

/**
 * The form as it stands in front of a person at one step of the work: white what is on, yellow what the hands are on, and on
 * it what the step does, pins, thread, carried lines or the tape.
 */
export interface WorkPicture {
  readonly levels: readonly PlannedLevel[];
  readonly on: readonly Piece[];
  readonly now: readonly Piece[];
  readonly view: FigureView;
  readonly doing: "pin" | "baste" | "carry" | "read" | "trial" | "plan" | "look" | "none";
  /** Where the tape lies, and whether it runs from side seam to side seam. */
  readonly tape?: { readonly level: LevelName; readonly isHalf: boolean };
  /** Words to the right of a height (mm below the nape), as the distance of an edge from a line. */
  readonly notes: readonly { readonly depth: number; readonly lines: readonly [string, string] }[];
  /** What the level lines are called at their left ends; null in a picture too small for words. */
  readonly names: { readonly [level in LevelName]: string } | null;
  /** Seen close, from this height to that one. */
  readonly crop: { readonly top: number; readonly bottom: number } | null;
  readonly textSize: number;
  readonly title: string;
  readonly description: string;
}

export function workScene(picture: WorkPicture): Scene {
  const { levels, on, now, view, doing, tape, textSize, title, description } = picture;
  const shape = formTorso(levels);
  const pieces = [...on, ...now];
  const sectionAt = formCurveOf(levels);
  const top = Math.min(110, ...pieces.map((piece) => pieceExtent(piece).top - 5));
  const bottom = Math.max(shape.hem, ...pieces.map((piece) => pieceExtent(piece).bottom + 5));
  const padded = figureSections(sectionAt, pieces, top, bottom);
  const over = paddedShape(shape, padded, view);
  const outlines = (some: readonly Piece[]) =>
    some.flatMap((piece) => outlinesOf(piece, view, sectionAt, padded, over));
  const atHand = outlines(now);
  const frame = frameOf(picture, over);
  return {
    title,
    description,
    frame,
    textSize,
    marks: [
      ...(view === "side" ? sideTorso(shape) : frontTorso(shape, view)),
      ...(isWhole.has(doing)
        ? wholeMarks(pieces, padded, view, doing === "baste")
        : [mark("battingOn", ...outlines(on).map(({ path }) => path))]),
      ...(doing === "baste" ? [mark("torsoHair", ...atHand.map(({ path }) => path))] : []),
      ...(isYellow.has(doing)
        ? [
            mark("battingNow", ...atHand.map(({ path }) => path)),
            mark("torsoHair", ...atHand.flatMap(({ ring }) => fibersAlong(ring))),
          ]
        : []),
      mark("levelLine", ...levelNames.map((name) => lineAt(over, name, view))),
      ...(doing === "trial" ? trialStrip(over) : []),
      mark("thread", ...(doing === "baste" ? atHand.flatMap(({ ring }) => stitchesInside(ring)) : [])),
      mark("thread", ...(doing === "carry" ? carried(over, view) : [])),
      noteLines(picture, over, frame),
      ...(doing === "pin" ? pinMarks(outlines(now.filter(isPinned)).flatMap(({ ring }) => pinsAlong(ring))) : []),
      ...(tape === undefined ? [] : tapeAround(over, over.levels[tape.level].depthBelowNape, tape.isHalf)),
      ...(doing === "look" ? bodyMarks(levels, bodySurface(levels, top, bottom), view) : []),
    ],
    labels: [...nameLabels(picture, frame), ...noteLabels(picture, frame)],
  };
}

/** Seen from where most of it lies. */
export const viewOfPieces = (pieces: readonly Piece[]): FigureView =>
  pieces.length > 0 && pieces.every(({ anchor }) => anchor === "centerBack") ? "back" : "front";

/** What the hands are on now. */
const isYellow: ReadonlySet<WorkPicture["doing"]> = new Set(["pin", "plan"]);

/** The padding as one shape, where no single piece of it is at hand. */
const isWhole: ReadonlySet<WorkPicture["doing"]> = new Set(["look", "none", "baste", "carry"]);

function wholeMarks(
  pieces: readonly Piece[],
  padded: readonly PaddedSection[],
  view: FigureView,
  isNow: boolean,
): readonly Mark[] {
  if (pieces.length === 0) return [];
  const extents = pieces.map(pieceExtent);
  const [top, bottom] = [Math.min(...extents.map((one) => one.top)), Math.max(...extents.map((one) => one.bottom))];
  const { left, right } = silhouette(padded, view);
  const within = ({ y }: PicturePoint) => y >= top && y <= bottom;
  const ring = [...left.filter(within), ...right.filter(within).toReversed()];
  return [mark(isNow ? "battingNow" : "battingOn", closedPath(ring))];
}

/** The strip of the trial, its three turns edge on edge around the waist. */
function trialStrip(shape: TorsoShape): readonly Mark[] {
  const depth = shape.levels.waist.depthBelowNape - stripHeight / 2;
  const wider = { ...shape, half: (at: number) => shape.half(at) + 14 };
  return [mark("battingOn", levelTape(wider, depth, "front", stripHeight).band)];
}

/** 3 in. */
const stripHeight = 76;

const bodySurface = (levels: readonly PlannedLevel[], top: number, bottom: number) =>
  figureSections(bodyCurveOf(levels), [], top, bottom);

function outlinesOf(
  piece: Piece,
  view: FigureView,
  sectionAt: SectionAt,
  padded: readonly PaddedSection[],
  shape: TorsoShape,
) {
  return pieceOnFigure(piece, view, sectionAt, padded).map((strip) => battingPath(strip, shape, view));
}

const lineAt = (shape: TorsoShape, level: LevelName, view: FigureView): string =>
  levelTape(shape, shape.levels[level].depthBelowNape, view === "side" ? "side" : "front").line;

const carried = (shape: TorsoShape, view: FigureView): readonly string[] => [
  ...levelNames.map((name) => lineAt(shape, name, view)),
  segment(at(0, shape.levels.bust.depthBelowNape - 20), at(0, shape.hem - 30)),
];

/** A cup pad is held by the cup. */
const isPinned = ({ kind }: Piece): boolean => kind !== "cup";

const pinMarks = (pins: ReturnType<typeof pinsAlong>): readonly Mark[] => [
  mark("pinShaft", ...pins.map(({ shaft }) => shaft)),
  mark("dot", ...pins.map(({ head }) => head)),
];

/** The whole form with room for names left and notes right, or the part that matters seen close. */
function frameOf({ crop, textSize, names, notes, doing, view }: WorkPicture, shape: TorsoShape): Frame {
  const reach = (depth: number) =>
    view === "side" ? Math.max(shape.front(depth), shape.back(depth)) : shape.half(depth);
  const half = Math.max(shape.shoulderHalf, ...levelNames.map((name) => reach(shape.levels[name].depthBelowNape))) + 14;
  const left = doing === "look" || names === null ? 12 : nameRoom * textSize;
  const right = notes.length === 0 ? 12 : noteRoom(notes) * textSize;
  const [top, bottom] = crop === null ? [-92, shape.hem + 40] : [crop.top, crop.bottom];
  return { x: -half - left, y: top, width: 2 * half + left + right, height: bottom - top };
}

/** Room for the longest name of a level, in letters' heights. */
const nameRoom = 4.9;

/** Room for the longest distance with its words, in letters' heights: a letter is about half as wide as it is high. */
const noteRoom = (notes: WorkPicture["notes"]): number =>
  Math.max(7.4, ...notes.flatMap(({ lines }) => lines.map((words) => 0.48 * words.length + 0.5)));

const nameLabels = ({ levels, names, doing }: WorkPicture, frame: Frame): readonly Label[] =>
  doing === "look" || names === null
    ? []
    : levels
        .filter(({ depthBelowNape }) => depthBelowNape.value > frame.y && depthBelowNape.value < frame.y + frame.height)
        .map(({ name, depthBelowNape }) => label("name", at(frame.x + 6, depthBelowNape.value), names[name], "start"));

const noteLabels = ({ notes, textSize }: WorkPicture, frame: Frame): readonly Label[] =>
  notes.flatMap(({ depth, lines: [amount, where] }) => {
    const x = frame.x + frame.width - noteRoom(notes) * textSize + 0.4 * textSize;
    return [
      label("number", at(x, depth - 0.55 * textSize), amount, "start"),
      label("quiet", at(x, depth + 0.55 * textSize), where, "start"),
    ];
  });

/** From an edge to its distance. */
const noteLines = ({ notes, textSize }: WorkPicture, shape: TorsoShape, frame: Frame): Mark =>
  mark(
    "leader",
    ...notes.map(({ depth }) =>
      segment(at(shape.half(depth) + 6, depth), at(frame.x + frame.width - noteRoom(notes) * textSize, depth)),
    ),
  );
