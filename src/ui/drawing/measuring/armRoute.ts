import { heightCurve } from "../../../core/geometry/heightCurve";
import { at, type PicturePoint } from "../picturePoint";
import { landmarkWords } from "../../../text/pictures";
import { type FigureShape, nape } from "./figureShape";
import { armInside, armOutside } from "./personOutline";
import { plainRoute, type TapeRoute } from "./tapeRoute";

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

/** The left arm, on the right of the page seen from the front: its two edges at a drop, above the hand. */
const down = (points: readonly PicturePoint[]) =>
  heightCurve(
    points.map(({ y }) => y),
    points.map(({ x }) => x),
  );
const outside = down(armOutside.slice(0, 10));
const inside = down(armInside.slice(4).toReversed());

/** Round the arm at a drop, square to the way it hangs, with the hidden half behind it. */
function armRing(
  drop: number,
  { armShift }: FigureShape,
  words: string,
): Pick<TapeRoute, "tapes" | "hidden" | "landmarks"> {
  const [from, to] = [at(inside(drop + 5) + armShift, drop + 5), at(outside(drop - 5) + armShift, drop - 5)];
  const bow = (sag: number): readonly PicturePoint[] =>
    [0, 0.1, 0.3, 0.5, 0.7, 0.9, 1].map((share) =>
      at(
        from.x + (to.x - from.x) * share,
        from.y + (to.y - from.y) * share + sag * Math.sqrt(Math.max(0, 1 - (2 * share - 1) ** 2)),
      ),
    );
  return { tapes: [bow(9)], hidden: [bow(-9)], landmarks: [{ place: to, words }] };
}

/** Down the outside of the arm from the end of the shoulder to a drop, just inside its edge. */
function armLine(drop: number, { armShift, shoulderPoint }: FigureShape): readonly PicturePoint[] {
  const steps = Math.ceil((drop - shoulderPoint.y) / 30);
  return Array.from({ length: steps + 1 }, (_, i) => {
    const y = shoulderPoint.y + ((drop - shoulderPoint.y) * i) / steps;
    return i === 0 ? shoulderPoint : at(outside(y) + armShift - 9, y);
  });
}
