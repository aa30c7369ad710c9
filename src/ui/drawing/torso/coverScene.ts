import { pictureWords } from "../../../text/pictures";
import { type LevelName, levelNames } from "../../../core/body/vocabulary";
import { type Piece, pieceExtent } from "../../../core/padding/piece";
import type { PlannedLevel } from "../../../core/plan/plan";
import { formCurveOf } from "../../../core/plan/torsosOfPlan";
import { closedPath, openPath, segment } from "../pathText";
import { at, type Frame, type Mark, mark, type PicturePoint, type Scene } from "../scene";
import { figureSections } from "../silhouette";
import { pinsAlong } from "./battingMarks";
import { paddedShape } from "./paddedShape";
import { tapeAround } from "./tapeAround";
import { frontTorso, hang, levelTape } from "./torsoFigure";
import { formTorso, heightsDown, type TorsoShape } from "./torsoShape";

/** What is done over the finished padding. */
export type CoverDoing = "pinSides" | "closed" | "read" | "hem" | "waistTape" | "lines" | "bag";

/** The covered form as it stands in front of a person: its cover drawn as a form's own cloth, and yellow what the hands are on. */
export interface CoverView {
  readonly levels: readonly PlannedLevel[];
  readonly on: readonly Piece[];
  readonly doing: CoverDoing;
  /** Where the measuring tape lies, and whether it runs from side seam to side seam. */
  readonly tape?: { readonly level: LevelName; readonly isHalf: boolean };
  readonly title: string;
  /** Whether there is a cover; the waist tape and the lines go on without one as well. */
  readonly isCovered: boolean;
}

export function coverScene({ levels, on, doing, tape, title, isCovered }: CoverView): Scene {
  const bare = formTorso(levels);
  const top = Math.min(110, ...on.map((piece) => pieceExtent(piece).top - 5));
  const bottom = Math.max(bare.hem, ...on.map((piece) => pieceExtent(piece).bottom + 5));
  const view = doing === "bag" || doing === "waistTape" ? "back" : "front";
  const shape = bridged(paddedShape(bare, figureSections(formCurveOf(levels), on, top, bottom), view));
  return {
    title,
    description: { ...pictureWords.cover, ...(isCovered ? {} : pictureWords.uncovered) }[doing],
    frame: frameOf(shape, doing, tape?.level),
    textSize: 30,
    marks:
      doing === "bag" ? bagged(shape) : [...frontTorso(shape, view), ...marksOf(shape, doing), ...tapeOf(shape, tape)],
    labels: [],
  };
}

/** Pulled cloth runs smoothly over the steps where layers end. */
const bridged = (shape: TorsoShape): TorsoShape => ({
  ...shape,
  half: (depth) => bridge.reduce((sum, by) => sum + shape.half(depth + by), 0) / bridge.length,
});

const bridge = [-45, -30, -15, 0, 15, 30, 45];

function marksOf(shape: TorsoShape, doing: Exclude<CoverDoing, "bag">): readonly Mark[] {
  switch (doing) {
    case "pinSides":
      return [...flange(shape, 1), ...flange(shape, -1)];
    case "closed":
    case "read":
      return [];
    case "hem": {
      const { band } = levelTape(shape, shape.hem - hemHeight, "front", hemHeight);
      return [mark("tapeNow", band), mark("thread", lineOf(shape, shape.hem - hemHeight / 2))];
    }
    case "waistTape": {
      const { depthBelowNape } = shape.levels.waist;
      const { band } = levelTape(shape, depthBelowNape, "front", waistTapeHeight);
      const end = depthBelowNape + hang(shape, depthBelowNape);
      return [
        mark("tapeNow", band),
        mark("thread", lineOf(shape, depthBelowNape + 4)),
        // One end over the other at center back.
        mark("torsoCenter", segment(at(12, end), at(12, end + waistTapeHeight))),
      ];
    }
    case "lines":
      return [
        mark(
          "thread",
          ...(["bust", "waist", "fullHip"] as const).map((name) => lineOf(shape, shape.levels[name].depthBelowNape)),
        ),
        mark("thread", segment(at(0, 78), at(0, shape.hem + hang(shape, shape.hem)))),
      ];
  }
}

const tapeOf = (shape: TorsoShape, tape: CoverView["tape"]): readonly Mark[] =>
  tape === undefined ? [] : tapeAround(shape, shape.levels[tape.level].depthBelowNape, tape.isHalf);

const [hemHeight, waistTapeHeight] = [26, 18];

/** A level line as it hangs. */
const lineOf = (shape: TorsoShape, depth: number): string => levelTape(shape, depth, "front").line;

/** Cloth pinched out along a side, with pins close to the form. */
function flange(shape: TorsoShape, side: 1 | -1): readonly Mark[] {
  const heights = heightsDown(shape.armholeBottom + 8, shape.hem);
  const edge = (out: number): readonly PicturePoint[] =>
    heights.map((depth, i) => at(side * (shape.half(depth) + out * Math.min(1, i / 2)), depth));
  const outer = edge(pinched);
  const ring = [...edge(0), ...outer.toReversed()];
  const pins = pinsAlong([...edge(pinched / 3), ...edge(pinched / 3).toReversed()]);
  return [
    mark("battingNow", closedPath(ring)),
    mark("torsoHair", openPath(outer)),
    mark("pinShaft", ...pins.map(({ shaft }) => shaft)),
    mark("dot", ...pins.map(({ head }) => head)),
  ];
}

/** How far the cloth that is pinched stands out (mm). */
const pinched = 24;

/** A bag over all of it, gathered above the neck, from which the base looks out. */
function bagged(shape: TorsoShape): readonly Mark[] {
  const half = Math.max(shape.shoulderHalf, ...levelNames.map((name) => shape.levels[name].half)) + 34;
  const hem = shape.hem + 24;
  const side = (sign: 1 | -1) =>
    `C${sign * 70} -60 ${sign * (half - 8)} -40 ${sign * (half - 6)} 60L${sign * half} ${hem}`;
  const path = `M0 -112${side(1)}Q0 ${hem + 30} ${-half} ${hem}L${-(half - 6)} 60C${-(half - 8)} -40 -70 -60 0 -112Z`;
  const folds = [-0.5, 0.05, 0.55].map((share) => segment(at(share * 0.5 * half, -30), at(share * half, hem - 40)));
  return [
    ...frontTorso(shape, "back").slice(0, 1),
    mark("battingOn", path),
    mark("torsoHair", ...folds),
    mark("torsoLine", "M-26 -96Q0 -84 26 -96M-26 -96L-44 -70M26 -96L44 -72"),
  ];
}

function frameOf(shape: TorsoShape, doing: CoverDoing, read: LevelName | undefined): Frame {
  const half =
    Math.max(shape.shoulderHalf, ...levelNames.map((name) => shape.half(shape.levels[name].depthBelowNape))) + 48;
  const whole = { x: -half, y: -124, width: 2 * half, height: shape.hem + 170 };
  const line = doing === "waistTape" ? "waist" : read;
  if (line !== undefined) return { ...whole, y: shape.levels[line].depthBelowNape - 150, height: 300 };
  if (doing === "hem") return { ...whole, y: shape.hem - 220, height: 300 };
  return whole;
}
