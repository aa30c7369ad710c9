import type { LengthName } from "../../../core/body/vocabulary";
import { at, between, type PicturePoint } from "../scene";
import { landmarkWords } from "../../../text/pictures";
import {
  apexToUnderbustRoute,
  armRoute,
  backRoute,
  belowNapeRoute,
  heightRoute,
  neckRoute,
  shoulderDropRoute,
  shoulderRoute,
} from "./bodyRoutes";
import {
  type FigureShape,
  type Landmark,
  mirror,
  nape,
  onSide,
  plainRoute,
  type Side,
  type TapeRoute,
} from "./tapeRoute";

type Route = (shape: FigureShape) => TapeRoute;
const overChest =
  (...sides: readonly Side[]): Route =>
  (shape) =>
    chestRoute(shape, sides);
const overShoulder =
  (...sides: readonly Side[]): Route =>
  (shape) =>
    shoulderRoute(shape, sides);

const routes: { readonly [name in LengthName]: Route } = {
  shoulderToApex: overChest("left", "right"),
  leftShoulderToApex: overChest("left"),
  rightShoulderToApex: overChest("right"),
  apexToApex: apartRoute,
  napeHeight: (shape) => heightRoute(0, landmarkWords.nape, shape),
  lowerEdgeBelowNape: (shape) => belowNapeRoute(lowerEdge, landmarkWords.lowerEdge, shape),
  apexToUnderbust: apexToUnderbustRoute,
  lowerBreastGirth: lowerBreastRoute,
  napeToWaist: backLengthRoute,
  waistToHighHip: (shape) => hipRoute("highHip", shape),
  waistToFullHip: (shape) => hipRoute("fullHip", shape),
  frontWaistLength: (shape) => waistLengthRoute("frontWaistLength", shape),
  sideNeckToWaistBack: (shape) => waistLengthRoute("sideNeckToWaistBack", shape),
  waistToFloorFront: (shape) => floorRoute("waistToFloorFront", shape),
  waistToFloorBack: (shape) => floorRoute("waistToFloorBack", shape),
  waistToFloorLeft: (shape) => floorRoute("waistToFloorLeft", shape),
  waistToFloorRight: (shape) => floorRoute("waistToFloorRight", shape),
  shoulderLength: overShoulder("left", "right"),
  leftShoulderLength: overShoulder("left"),
  rightShoulderLength: overShoulder("right"),
  shoulderDrop: shoulderDropRoute,
  acrossShoulders: (shape) => backRoute("acrossShoulders", shape),
  upperBackWidth: (shape) => backRoute("upperBackWidth", shape),
  neckGirth: neckRoute,
  upperArmGirth: (shape) => armRoute("upperArmGirth", shape),
  elbowGirth: (shape) => armRoute("elbowGirth", shape),
  wristGirth: (shape) => armRoute("wristGirth", shape),
  armLength: (shape) => armRoute("armLength", shape),
  shoulderToElbow: (shape) => armRoute("shoulderToElbow", shape),
};

/** How the tape is led for a measurement that belongs to no single level. */
export const lengthRoute = (name: LengthName, shape: FigureShape): TapeRoute => routes[name](shape);

/** The lower edge of the figure that the pictures show (mm below the nape). */
const lowerEdge = 660;

/** All around, three quarters of the way from the bust line to the underbust line, as seen from a little above. */
function lowerBreastRoute({ drops, half }: FigureShape): TapeRoute {
  const drop = drops.bust + 0.75 * (drops.underbust - drops.bust);
  const bow = (sag: number): readonly PicturePoint[] =>
    Array.from({ length: 25 }, (_, i) => {
      const share = -1 + i / 12;
      return at(share * half(drop), drop + sag * Math.sqrt(Math.max(0, 1 - share * share)));
    });
  return {
    ...plainRoute,
    tapes: [bow(13)],
    hidden: [bow(-13)],
    landmarks: [{ place: at(half(drop), drop), words: landmarkWords.lowerBreast }],
  };
}

function apartRoute({ apex }: FigureShape): TapeRoute {
  return {
    ...plainRoute,
    tapes: [[mirror(apex), apex]],
    landmarks: [mirror(apex), apex].map((place) => ({ place, words: landmarkWords.apex })),
  };
}

function backLengthRoute(shape: FigureShape): TapeRoute {
  const waist = at(0, shape.drops.waist);
  return {
    ...plainRoute,
    view: "back",
    tapes: [[nape, at(0, 120), waist]],
    landmarks: [
      { place: nape, words: landmarkWords.nape },
      { place: waist, words: landmarkWords.waist },
    ],
    guides: [waistGuide(shape)],
  };
}

function chestRoute({ neckSide, apex }: FigureShape, sides: readonly Side[]): TapeRoute {
  const line = [neckSide, between(neckSide, apex, 0.5), apex].map((point, i) =>
    i === 1 ? at(point.x - 3, point.y) : point,
  );
  const ends = (side: Side): readonly Landmark[] =>
    onSide(side, [neckSide, apex]).map((place, i) => ({
      place,
      words: i === 0 ? landmarkWords.neckSide : landmarkWords.apex,
    }));
  return { ...plainRoute, tapes: sides.map((side) => onSide(side, line)), landmarks: sides.flatMap(ends) };
}

function waistLengthRoute(
  name: "frontWaistLength" | "sideNeckToWaistBack",
  { neckSide, apex, drops }: FigureShape,
): TapeRoute {
  const isFront = name === "frontWaistLength";
  const x = isFront ? apex.x : 74;
  const line = isFront
    ? [neckSide, between(neckSide, apex, 0.5), apex, at(x, drops.waist)]
    : [neckSide, at(70, 60), at(x, 150), at(x, drops.waist)];
  const places = [neckSide, ...(isFront ? [apex] : []), at(x, drops.waist)];
  const words = [landmarkWords.neckSide, ...(isFront ? [landmarkWords.apex] : []), landmarkWords.waist];
  return {
    ...plainRoute,
    view: isFront ? "front" : "back",
    tapes: [line],
    landmarks: places.map((place, i) => ({ place, words: words[i] ?? "" })),
    guides: [{ role: "seam", line: [at(-drops.waist * 0.38, drops.waist), at(drops.waist * 0.38, drops.waist)] }],
  };
}

const waistGuide = ({ half, drops }: FigureShape): TapeRoute["guides"][number] => ({
  role: "seam",
  line: [at(-half(drops.waist), drops.waist), at(half(drops.waist), drops.waist)],
});

function hipRoute(to: "highHip" | "fullHip", { drops, front, back }: FigureShape): TapeRoute {
  const across = (drop: number): readonly PicturePoint[] => [at(-front(drop), drop), at(back(drop), drop)];
  return {
    ...plainRoute,
    view: "side",
    tapes: [[at(0, drops.waist), at(0, drops[to])]],
    landmarks: [
      { place: at(0, drops.waist), words: landmarkWords.waist },
      { place: at(0, drops[to]), words: landmarkWords[to] },
    ],
    guides: [
      { role: "seam", line: across(drops.waist) },
      { role: "seam", line: across(drops[to]) },
    ],
  };
}

/** From the waist over whatever stands out furthest below it, then straight down to the floor. */
function floorRoute(
  name: "waistToFloorFront" | "waistToFloorBack" | "waistToFloorLeft" | "waistToFloorRight",
  shape: FigureShape,
): TapeRoute {
  const { drops, front, back, half, floor } = shape;
  const steps = [0, 40, 80, 120, 160, 200, 240].map((step) => drops.waist + step);
  const hanging = (reach: (drop: number) => number, way: 1 | -1): readonly PicturePoint[] => {
    const furthest = Math.max(...steps.map(reach));
    const from = steps.findIndex((drop) => reach(drop) >= furthest);
    return [
      ...steps.slice(0, from + 1).map((drop) => at(way * (reach(drop) + 9), drop)),
      at(way * (furthest + 9), floor),
    ];
  };
  const isFace = name === "waistToFloorLeft" || name === "waistToFloorRight";
  const reach = isFace ? half : name === "waistToFloorFront" ? front : back;
  const way = name === "waistToFloorLeft" || name === "waistToFloorBack" ? 1 : -1;
  const line = hanging(reach, way);
  return {
    ...plainRoute,
    view: isFace ? "front" : "side",
    shot: "whole",
    tapes: [line],
    landmarks: [{ place: line[0] ?? at(0, drops.waist), words: landmarkWords.waist }],
    guides: isFace
      ? [waistGuide(shape)]
      : [{ role: "seam", line: [at(-front(drops.waist), drops.waist), at(back(drops.waist), drops.waist)] }],
  };
}
