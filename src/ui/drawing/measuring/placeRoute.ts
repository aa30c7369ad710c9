import type { LevelName } from "../../../core/body/vocabulary";
import { at, type PicturePoint } from "../scene";
import { landmarkWords } from "../../../text/pictures";
import { type FigureShape, nape, plainRoute, type TapeRoute } from "./tapeRoute";

/** How heights, vertical distances and depths are read: straight through the air, with a ruler or books to help. */
export function belowNapeRoute(drop: number, words: string, { back }: FigureShape): TapeRoute {
  const beside = back(drop) + 60;
  return {
    ...plainRoute,
    view: "side",
    straight: [{ from: at(beside, 0), to: at(beside, drop), helper: ruler(at(back(drop), drop), at(beside, drop)) }],
    landmarks: [
      { place: nape, words: landmarkWords.nape },
      { place: at(back(drop), drop), words },
    ],
    guides: [{ role: "seam", line: [nape, at(beside, 0)] }],
  };
}

/** From the floor straight up beside the figure to the height of a place. */
export function heightRoute(drop: number, words: string, { half, floor }: FigureShape): TapeRoute {
  const reach = drop === 0 ? 0 : half(drop);
  // On the side of the page where no words stand, clear of the hand.
  const beside = -390;
  return {
    ...plainRoute,
    view: drop === 0 ? "back" : "front",
    shot: "whole",
    straight: [{ from: at(beside, floor), to: at(beside, drop), helper: ruler(at(-reach, drop), at(beside, drop)) }],
    landmarks: [{ place: at(reach, drop), words }],
    guides: drop === 0 ? [] : [{ role: "seam", line: [at(-reach, drop), at(reach, drop)] }],
  };
}

/** Straight through from front to back, between two books held flat on the line. */
export function depthRoute(level: LevelName, { drops, front, back }: FigureShape): TapeRoute {
  const drop = drops[level];
  const [from, to] = [at(-front(drop), drop), at(back(drop), drop)];
  const helper = [...book(from, -1), ...book(to, 1)];
  return { ...plainRoute, view: "side", straight: [{ from, to, helper }] };
}

/** From the fullest point straight down to the underbust line, beside the bust. */
export function apexToUnderbustRoute({ drops, front, apex }: FigureShape): TapeRoute {
  const beside = -front(apex.y) - 18;
  return {
    ...plainRoute,
    view: "side",
    straight: [
      {
        from: at(beside, apex.y),
        to: at(beside, drops.underbust),
        helper: ruler(at(-front(drops.underbust), drops.underbust), at(beside, drops.underbust)),
      },
    ],
    landmarks: [
      { place: at(-front(apex.y), apex.y), words: landmarkWords.apex },
      { place: at(-front(drops.underbust), drops.underbust), words: landmarkWords.underbust },
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
