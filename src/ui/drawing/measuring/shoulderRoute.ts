import { at, type PicturePoint } from "../picturePoint";
import { landmarkWords } from "../../../text/pictures";
import { type FigureShape, nape } from "./figureShape";
import { mirror, onSide, type Side } from "./side";
import { plainRoute, type TapeRoute } from "./tapeRoute";

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

export function shoulderDropRoute({ neckSide, shoulderPoint }: FigureShape): TapeRoute {
  const corner = at(shoulderPoint.x, neckSide.y);
  return {
    ...plainRoute,
    shot: "shoulders",
    straight: [{ from: corner, to: shoulderPoint, helper: [neckSide, at(corner.x + 40, corner.y)] }],
    landmarks: [
      { place: neckSide, words: "" },
      { place: shoulderPoint, words: "" },
      { place: mirror(neckSide), words: landmarkWords.neckSide },
      { place: mirror(shoulderPoint), words: landmarkWords.shoulderPoint },
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
