import type { LengthName } from "../../../core/body/vocabulary";
import { at, between, type PicturePoint } from "../scene";
import { landmarkWords } from "../../../text/pictures";
import {
  apexToUnderbustRoute,
  armholeRoute,
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
  upperChestGirth: upperChestRoute,
  upperChestFrontArc: (shape) => ({ ...upperChestRoute(shape), hidden: [], guides: upperChestSides(shape) }),
  upperChestBelowNape: (shape) => belowNapeRoute(upperChest, landmarkWords.upperChest, shape),
  acrossChest: acrossChestRoute,
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
  shoulderDrop: (shape) => shoulderDropRoute(shape, "left"),
  leftShoulderDrop: (shape) => shoulderDropRoute(shape, "left"),
  rightShoulderDrop: (shape) => shoulderDropRoute(shape, "right"),
  acrossShoulders: (shape) => backRoute("acrossShoulders", shape),
  upperBackWidth: (shape) => backRoute("upperBackWidth", shape),
  neckGirth: neckRoute,
  upperArmGirth: (shape) => armRoute("upperArmGirth", shape),
  elbowGirth: (shape) => armRoute("elbowGirth", shape),
  wristGirth: (shape) => armRoute("wristGirth", shape),
  armLength: (shape) => armRoute("armLength", shape),
  shoulderToElbow: (shape) => armRoute("shoulderToElbow", shape),
  armholePlateHeight: (shape) => armholeRoute("height", shape),
  armholePlateBreadth: (shape) => armholeRoute("breadth", shape),
};

/** How the tape is led for a measurement that belongs to no single level. */
export const lengthRoute = (name: LengthName, shape: FigureShape): TapeRoute => routes[name](shape);

/** The lower edge of the figure that the pictures show (mm below the nape). */
const lowerEdge = 660;

/** Where the pictures show the upper chest line (mm below the nape). */
const upperChest = 172;

/** All around, three quarters of the way from the bust line to the underbust line. */
function lowerBreastRoute(shape: FigureShape): TapeRoute {
  const { bust, underbust } = shape.depths;
  return aroundRoute(bust + 0.75 * (underbust - bust), landmarkWords.lowerBreast, shape);
}

function upperChestRoute(shape: FigureShape): TapeRoute {
  return aroundRoute(upperChest, landmarkWords.upperChest, shape);
}

const upperChestSides = ({ half }: FigureShape): TapeRoute["guides"] =>
  [-1, 1].map((side) => ({
    role: "seam" as const,
    line: [0, 30, 60, 90].map((step) => at(side * (half(upperChest + step) - 5), upperChest + step)),
  }));

/** All around at a height, as seen from a little above. */
function aroundRoute(depth: number, words: string, { half }: FigureShape): TapeRoute {
  const bow = (sag: number): readonly PicturePoint[] =>
    Array.from({ length: 25 }, (_, i) => {
      const share = -1 + i / 12;
      return at(share * half(depth), depth + sag * Math.sqrt(Math.max(0, 1 - share * share)));
    });
  return {
    ...plainRoute,
    tapes: [bow(13)],
    hidden: [bow(-13)],
    landmarks: [{ place: at(half(depth), depth), words }],
  };
}

function acrossChestRoute({ armCrease }: FigureShape): TapeRoute {
  const ends = [mirror(armCrease), armCrease];
  return {
    ...plainRoute,
    shot: "shoulders",
    tapes: [[mirror(armCrease), at(0, armCrease.y + 5), armCrease]],
    landmarks: ends.map((place) => ({ place, words: landmarkWords.armCrease })),
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
  const waist = at(0, shape.depths.waist);
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
  { neckSide, apex, depths }: FigureShape,
): TapeRoute {
  const isFront = name === "frontWaistLength";
  const x = isFront ? apex.x : 74;
  const line = isFront
    ? [neckSide, between(neckSide, apex, 0.5), apex, at(x, depths.waist)]
    : [neckSide, at(70, 60), at(x, 150), at(x, depths.waist)];
  const places = [neckSide, ...(isFront ? [apex] : []), at(x, depths.waist)];
  const words = [landmarkWords.neckSide, ...(isFront ? [landmarkWords.apex] : []), landmarkWords.waist];
  return {
    ...plainRoute,
    view: isFront ? "front" : "back",
    tapes: [line],
    landmarks: places.map((place, i) => ({ place, words: words[i] ?? "" })),
    guides: [{ role: "seam", line: [at(-depths.waist * 0.38, depths.waist), at(depths.waist * 0.38, depths.waist)] }],
  };
}

const waistGuide = ({ half, depths }: FigureShape): TapeRoute["guides"][number] => ({
  role: "seam",
  line: [at(-half(depths.waist), depths.waist), at(half(depths.waist), depths.waist)],
});

function hipRoute(to: "highHip" | "fullHip", { depths, front, back }: FigureShape): TapeRoute {
  const across = (depth: number): readonly PicturePoint[] => [at(-front(depth), depth), at(back(depth), depth)];
  return {
    ...plainRoute,
    view: "side",
    tapes: [[at(0, depths.waist), at(0, depths[to])]],
    landmarks: [
      { place: at(0, depths.waist), words: landmarkWords.waist },
      { place: at(0, depths[to]), words: landmarkWords[to] },
    ],
    guides: [
      { role: "seam", line: across(depths.waist) },
      { role: "seam", line: across(depths[to]) },
    ],
  };
}

/** From the waist over whatever stands out furthest below it, then straight down to the floor. */
function floorRoute(
  name: "waistToFloorFront" | "waistToFloorBack" | "waistToFloorLeft" | "waistToFloorRight",
  shape: FigureShape,
): TapeRoute {
  const { depths, front, back, half, floor } = shape;
  const steps = [0, 40, 80, 120, 160, 200, 240].map((step) => depths.waist + step);
  const hanging = (reach: (depth: number) => number, way: 1 | -1): readonly PicturePoint[] => {
    const furthest = Math.max(...steps.map(reach));
    const from = steps.findIndex((depth) => reach(depth) >= furthest);
    return [
      ...steps.slice(0, from + 1).map((depth) => at(way * (reach(depth) + 9), depth)),
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
    landmarks: [{ place: line[0] ?? at(0, depths.waist), words: landmarkWords.waist }],
    guides: isFace
      ? [waistGuide(shape)]
      : [{ role: "seam", line: [at(-front(depths.waist), depths.waist), at(back(depths.waist), depths.waist)] }],
  };
}
