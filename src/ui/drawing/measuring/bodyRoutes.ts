import type { LevelName } from "../../../core/body/vocabulary";
import { heightCurve } from "../../../core/geometry/heightCurve";
import { landmarkWords } from "../../../text/pictures";
import { at, type PicturePoint } from "../scene";
import { armInside, armOutside } from "./measuredFigure";
import { type FigureShape, mirror, nape, onSide, plainRoute, type Side, type TapeRoute } from "./tapeRoute";

/** How heights, vertical distances and depths are read: straight through the air, with a ruler or books to help. */
export function belowNapeRoute(depth: number, words: string, { back }: FigureShape): TapeRoute {
  const beside = back(depth) + 60;
  return {
    ...plainRoute,
    view: "side",
    straight: [
      { from: at(beside, 0), to: at(beside, depth), helper: ruler(at(back(depth), depth), at(beside, depth)) },
    ],
    landmarks: [
      { place: nape, words: landmarkWords.nape },
      { place: at(back(depth), depth), words },
    ],
    guides: [{ role: "seam", line: [nape, at(beside, 0)] }],
  };
}

/** From the floor straight up beside the figure to the height of a place. */
export function heightRoute(depth: number, words: string, { half, floor }: FigureShape): TapeRoute {
  const reach = depth === 0 ? 0 : half(depth);
  // On the side of the page where no words stand, clear of the hand.
  const beside = -390;
  return {
    ...plainRoute,
    view: depth === 0 ? "back" : "front",
    shot: "whole",
    straight: [{ from: at(beside, floor), to: at(beside, depth), helper: ruler(at(-reach, depth), at(beside, depth)) }],
    landmarks: [{ place: at(reach, depth), words }],
    guides: depth === 0 ? [] : [{ role: "seam", line: [at(-reach, depth), at(reach, depth)] }],
  };
}

/** Straight through from front to back, between two books held flat on the line. */
export function depthRoute(level: LevelName, { depths, front, back }: FigureShape): TapeRoute {
  const depth = depths[level];
  const [from, to] = [at(-front(depth), depth), at(back(depth), depth)];
  const helper = [...book(from, -1), ...book(to, 1)];
  return { ...plainRoute, view: "side", straight: [{ from, to, helper }] };
}

/** From the fullest point straight down to the underbust line, beside the bust. */
export function apexToUnderbustRoute({ depths, front, apex }: FigureShape): TapeRoute {
  const beside = -front(apex.y) - 18;
  return {
    ...plainRoute,
    view: "side",
    straight: [
      {
        from: at(beside, apex.y),
        to: at(beside, depths.underbust),
        helper: ruler(at(-front(depths.underbust), depths.underbust), at(beside, depths.underbust)),
      },
    ],
    landmarks: [
      { place: at(-front(apex.y), apex.y), words: landmarkWords.apex },
      { place: at(-front(depths.underbust), depths.underbust), words: landmarkWords.underbust },
    ],
  };
}

/** A ruler lying level between two places, as the corners of its edge. */
const ruler = (from: PicturePoint, to: PicturePoint): readonly PicturePoint[] => [
  at(from.x, from.y - rulerHalf),
  at(to.x, to.y - rulerHalf),
  at(to.x, to.y + rulerHalf),
  at(from.x, from.y + rulerHalf),
];
const rulerHalf = 5;

const book = ({ x, y }: PicturePoint, way: 1 | -1): readonly PicturePoint[] => [
  at(x, y - 8),
  at(x + way * 70, y - 8),
  at(x + way * 70, y + 8),
  at(x, y + 8),
];

/** Tapes round the neck, along the shoulders and across the back. */
export function shoulderRoute({ neckSide, shoulderPoint }: FigureShape, sides: readonly Side[]): TapeRoute {
  const line = [neckSide, at(neckSide.x + 38, neckSide.y + 19), shoulderPoint];
  return {
    ...plainRoute,
    shot: "shoulders",
    tapes: sides.map((side) => onSide(side, line)),
    landmarks: sides.flatMap((side) =>
      onSide(side, [neckSide, shoulderPoint]).map((place, i) => ({
        place,
        words: i === 0 ? landmarkWords.neckSide : landmarkWords.shoulderPoint,
      })),
    ),
  };
}

/** Straight down beside the end of a shoulder; the words stand at the other one, clear of the ruler. */
export function shoulderDropRoute({ neckSide, shoulderPoint }: FigureShape, side: Side): TapeRoute {
  const corner = at(shoulderPoint.x, neckSide.y);
  const seen = (point: PicturePoint): PicturePoint => (side === "left" ? point : mirror(point));
  return {
    ...plainRoute,
    shot: "shoulders",
    straight: [
      { from: seen(corner), to: seen(shoulderPoint), helper: [seen(neckSide), seen(at(corner.x + 40, corner.y))] },
    ],
    landmarks: [
      { place: seen(neckSide), words: "" },
      { place: seen(shoulderPoint), words: "" },
      { place: mirror(seen(neckSide)), words: landmarkWords.neckSide },
      { place: mirror(seen(shoulderPoint)), words: landmarkWords.shoulderPoint },
    ],
  };
}

export function backRoute(
  name: "acrossShoulders" | "upperBackWidth",
  { neckSide, shoulderPoint, armCrease }: FigureShape,
): TapeRoute {
  const line =
    name === "acrossShoulders"
      ? [mirror(shoulderPoint), at(-110, 22), at(-50, 4), nape, at(50, 4), at(110, 22), shoulderPoint]
      : [mirror(armCrease), at(0, armCrease.y + 5), armCrease];
  const ends = name === "acrossShoulders" ? landmarkWords.shoulderPoint : landmarkWords.armCrease;
  const places = [line[0] ?? neckSide, line.at(-1) ?? neckSide].map((place) => ({ place, words: ends }));
  return {
    ...plainRoute,
    view: "back",
    shot: "shoulders",
    tapes: [line],
    landmarks: name === "acrossShoulders" ? [...places, { place: nape, words: landmarkWords.nape }] : places,
  };
}

export function neckRoute({ neckSide, throat }: FigureShape): TapeRoute {
  const curve = (dip: number): readonly PicturePoint[] =>
    [-1, -0.85, -0.6, -0.3, 0, 0.3, 0.6, 0.85, 1].map((share) =>
      at(share * neckSide.x, neckSide.y + (dip - neckSide.y) * (1 - share * share) ** 0.7),
    );
  return {
    ...plainRoute,
    shot: "shoulders",
    tapes: [curve(throat.y)],
    hidden: [curve(neckSide.y - 12)],
    landmarks: [
      { place: throat, words: landmarkWords.throat },
      { place: at(neckSide.x, neckSide.y), words: landmarkWords.neckSide },
    ],
  };
}

/** The oval that closes a form's armhole, seen from the side, with a ruler across it. */
export function armholeRoute(across: "height" | "breadth", { shoulderPoint }: FigureShape): TapeRoute {
  const [height, breadth] = [124, 92];
  const middle = at(0, shoulderPoint.y + height / 2);
  const onRim = (angle: number): PicturePoint =>
    at(middle.x + (breadth / 2) * Math.cos(angle), middle.y + (height / 2) * Math.sin(angle));
  const [from, to] = across === "height" ? [onRim(-Math.PI / 2), onRim(Math.PI / 2)] : [onRim(Math.PI), onRim(0)];
  const words =
    across === "height"
      ? [landmarkWords.armholeTop, landmarkWords.armholeBottom]
      : [landmarkWords.armholeFront, landmarkWords.armholeBack];
  return {
    ...plainRoute,
    view: "side",
    shot: "shoulders",
    straight: [{ from, to, helper: [] }],
    landmarks: [from, to].map((place, i) => ({ place, words: words[i] ?? "" })),
    guides: [{ role: "seam", line: Array.from({ length: 33 }, (_, i) => onRim((Math.PI * i) / 16)) }],
  };
}

/** Tapes round and along the arm. */
export function armRoute(
  name: "upperArmGirth" | "elbowGirth" | "wristGirth" | "armLength" | "shoulderToElbow",
  shape: FigureShape,
): TapeRoute {
  const base: TapeRoute = { ...plainRoute, shot: "arm" };
  switch (name) {
    case "upperArmGirth":
      return { ...base, ...armRing(200, shape, landmarkWords.midArm) };
    case "elbowGirth":
      return { ...base, ...armRing(360, shape, landmarkWords.elbow) };
    case "wristGirth":
      return { ...base, ...armRing(574, shape, landmarkWords.wrist) };
    case "armLength":
    case "shoulderToElbow": {
      const line = armLine(name === "armLength" ? 574 : 354, shape);
      const end = name === "armLength" ? landmarkWords.wrist : landmarkWords.elbow;
      return {
        ...base,
        tapes: [line],
        landmarks: [
          { place: shape.shoulderPoint, words: landmarkWords.shoulderPoint },
          ...(name === "armLength" ? [{ place: armLine(354, shape).at(-1) ?? nape, words: landmarkWords.elbow }] : []),
          { place: line.at(-1) ?? nape, words: end },
        ],
      };
    }
  }
}

/** The left arm, on the right of the page seen from the front: its two edges at a depth, above the hand. */
const down = (points: readonly PicturePoint[]) =>
  heightCurve(
    points.map(({ y }) => y),
    points.map(({ x }) => x),
  );
const outside = down(armOutside.slice(0, 10));
const inside = down(armInside.slice(4).toReversed());

/** Round the arm at a depth, square to the way it hangs, with the hidden half behind it. */
function armRing(
  depth: number,
  { armShift }: FigureShape,
  words: string,
): Pick<TapeRoute, "tapes" | "hidden" | "landmarks"> {
  const [from, to] = [at(inside(depth + 5) + armShift, depth + 5), at(outside(depth - 5) + armShift, depth - 5)];
  const bow = (sag: number): readonly PicturePoint[] =>
    [0, 0.1, 0.3, 0.5, 0.7, 0.9, 1].map((share) =>
      at(
        from.x + (to.x - from.x) * share,
        from.y + (to.y - from.y) * share + sag * Math.sqrt(Math.max(0, 1 - (2 * share - 1) ** 2)),
      ),
    );
  return { tapes: [bow(9)], hidden: [bow(-9)], landmarks: [{ place: to, words }] };
}

/** Down the outside of the arm from the end of the shoulder to a depth, just inside its edge. */
function armLine(depth: number, { armShift, shoulderPoint }: FigureShape): readonly PicturePoint[] {
  const steps = Math.ceil((depth - shoulderPoint.y) / 30);
  return Array.from({ length: steps + 1 }, (_, i) => {
    const y = shoulderPoint.y + ((depth - shoulderPoint.y) * i) / steps;
    return i === 0 ? shoulderPoint : at(outside(y) + armShift - 9, y);
  });
}
