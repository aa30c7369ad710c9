import {
  type LengthName,
  type LevelName,
  levelNames,
  type LevelReadingName,
  levelReadingNames,
  type MeasurementName,
} from "../../../core/body/vocabulary";
import { landmarkWords, levelWords } from "../../../text/pictures";
import { at, type PicturePoint } from "../scene";
import { lengthRoute } from "./lengthRoute";
import { belowNapeRoute, depthRoute, heightRoute } from "./bodyRoutes";
import { type FigureShape, plainRoute, type TapeRoute } from "./tapeRoute";

/** How the tape is led for a measurement on a figure: round or across a level, or along one of the lengths. */
export function measureRoute(name: MeasurementName, shape: FigureShape): TapeRoute {
  const level = levelOf(name);
  return level === null ? lengthRoute(name as LengthName, shape) : levelRoute(level.level, level.reading, shape);
}

/** Which level and reading a name is made of, or null for a length. */
export function levelOf(
  name: MeasurementName,
): { readonly level: LevelName; readonly reading: LevelReadingName } | null {
  for (const level of levelNames) {
    const reading = levelReadingNames.find((item) => name === `${level}${item}`);
    if (reading !== undefined) return { level, reading };
  }
  return null;
}

/**
 * The tape round one level, as it is seen from a little above: the near half bows down, the far half up. Arcs run
 * from side seam to side seam or from the centre to one side seam; a breadth is taken between two upright boards.
 */
function levelRoute(level: LevelName, reading: LevelReadingName, shape: FigureShape): TapeRoute {
  const depth = shape.depths[level];
  const half = shape.half(depth);
  const bow = (from: number, to: number, sag: number): readonly PicturePoint[] =>
    Array.from({ length: 25 }, (_, i) => {
      const share = from + ((to - from) * i) / 24;
      return at(share * half, depth + sag * Math.sqrt(Math.max(0, 1 - share * share)));
    });
  const seams = [-1, 1].map((side) => ({ role: "seam" as const, line: seamLine(side, depth, shape) }));
  const sideSeam = (side: number) => ({ place: at(side * half, depth), words: landmarkWords.sideSeam });
  // A hair's breadth off the centre, so that its words stand on the side the tape does not take.
  const centre = (words: string, towards: number) => ({ place: at(-towards / 2, depth + sag), words });
  const middle = { role: "centre" as const, line: [at(0, depth - 90), at(0, depth + 90)] };
  const arc = (view: "front" | "back", from: number, to: number): TapeRoute => ({
    ...plainRoute,
    view,
    tapes: [bow(from, to, sag)],
    landmarks: [
      ...[from, to].filter((end) => end !== 0).map(sideSeam),
      ...(from * to === 0
        ? [centre(view === "front" ? landmarkWords.centreFront : landmarkWords.centreBack, from + to)]
        : []),
    ],
    guides: from * to === 0 ? [...seams.filter(({ line }) => (line[0]?.x ?? 0) * (from + to) > 0), middle] : seams,
  });
  switch (reading) {
    case "Girth":
      return {
        ...plainRoute,
        tapes: [bow(-1, 1, sag)],
        hidden: [bow(-1, 1, -sag)],
        landmarks: girthLandmarks(level, shape),
      };
    case "FrontArc":
      return arc("front", -1, 1);
    case "BackArc":
      return arc("back", -1, 1);
    case "LeftFrontArc":
      return arc("front", 0, 1);
    case "RightFrontArc":
      return arc("front", 0, -1);
    case "LeftBackArc":
      return arc("back", 0, -1);
    case "RightBackArc":
      return arc("back", 0, 1);
    case "Breadth":
      return {
        ...plainRoute,
        straight: [{ from: at(-half, depth), to: at(half, depth), helper: boards(half, depth) }],
      };
    case "Depth":
      return depthRoute(level, shape);
    case "BelowNape":
      return belowNapeRoute(depth, levelWords[level], shape);
    case "Height":
      return heightRoute(depth, levelWords[level], shape);
  }
}

const sag = 13;

/** Down the side from the armpit, a short way above and below the level. */
function seamLine(side: number, depth: number, { half }: FigureShape): readonly PicturePoint[] {
  return [-60, -30, 0, 30, 60].map((step) => at(side * (half(depth + step) - 5), depth + step));
}

function girthLandmarks(level: LevelName, { apex, depths, half }: FigureShape): TapeRoute["landmarks"] {
  switch (level) {
    case "bust":
      return [{ place: apex, words: landmarkWords.apex }];
    case "underbust":
      return [{ place: at(half(depths.underbust) * 0.55, depths.underbust - 4), words: landmarkWords.underbust }];
    case "waist":
      return [{ place: at(half(depths.waist), depths.waist), words: landmarkWords.waist }];
    case "highHip":
      return [{ place: at(half(depths.highHip) * 0.62, depths.highHip - 8), words: landmarkWords.hipBone }];
    case "fullHip":
      return [{ place: at(half(depths.fullHip), depths.fullHip), words: landmarkWords.fullHip }];
  }
}

/** Two boards standing upright against the sides: the corners of one, then of the other. */
function boards(half: number, depth: number): readonly PicturePoint[] {
  const board = (side: number): readonly PicturePoint[] =>
    [
      [0, -70],
      [14, -70],
      [14, 70],
      [0, 70],
    ].map(([out, up]) => at(side * (half + (out ?? 0)), depth + (up ?? 0)));
  return [...board(-1), ...board(1)];
}
