import { type LevelName, type LevelReadingName, levelNames, levelReadingNames, type LengthName, type MeasurementName } from "../../core/body/vocabulary";
import type { FigureView } from "../drawing/figureView";
import { at, between, type PicturePoint } from "../drawing/picturePoint";
import { landmarkWords } from "../text/pictures";
import { levelRoute } from "./levelRoute";
import { armLine, armRing } from "./armRoute";
import { type FigureShape, nape } from "./figureShape";

/**
 * How a tape is led for one measurement: from which side it is seen, the tape's line where it shows and where the
 * figure hides it, lines that run straight through the air, and the landmarks with their words. Places are on the page.
 */
export interface MeasureRoute {
  readonly view: FigureView;
  readonly shot: "whole" | "torso" | "shoulders" | "arm";
  readonly tapes: readonly (readonly PicturePoint[])[];
  readonly hidden: readonly (readonly PicturePoint[])[];
  /** Measured through the air between two places, with boards or a ruler to help. */
  readonly straight: readonly { readonly from: PicturePoint; readonly to: PicturePoint; readonly helper: readonly PicturePoint[] }[];
  readonly landmarks: readonly Landmark[];
  /** Side seams, centre lines or a level to show besides. */
  readonly guides: readonly { readonly role: "seam" | "centre"; readonly line: readonly PicturePoint[] }[];
}

export interface Landmark {
  readonly place: PicturePoint;
  /** Empty where its twin on the other side is named. */
  readonly words: string;
}

export const plainRoute: MeasureRoute = { view: "front", shot: "torso", tapes: [], hidden: [], straight: [], landmarks: [], guides: [] };

export function measureRoute(name: MeasurementName, shape: FigureShape): MeasureRoute {
  const level = levelOf(name);
  return level === null ? lengthRoute(name as LengthName, shape) : levelRoute(level.level, level.reading, shape);
}

/** Which level and reading a name is made of, or null for a length. */
export function levelOf(name: MeasurementName): { readonly level: LevelName; readonly reading: LevelReadingName } | null {
  for (const level of levelNames) {
    const reading = levelReadingNames.find((item) => name === `${level}${item}`);
    if (reading !== undefined) return { level, reading };
  }
  return null;
}

const mirror = ({ x, y }: PicturePoint): PicturePoint => at(-x, y);
const mirrorLine = (line: readonly PicturePoint[]): readonly PicturePoint[] => line.map(mirror);

function lengthRoute(name: LengthName, shape: FigureShape): MeasureRoute {
  switch (name) {
    case "shoulderToApex":
      return chestRoute(shape, ["left", "right"]);
    case "leftShoulderToApex":
      return chestRoute(shape, ["left"]);
    case "rightShoulderToApex":
      return chestRoute(shape, ["right"]);
    case "apexToApex":
      return { ...plainRoute, tapes: [[mirror(shape.apex), shape.apex]], landmarks: [mirror(shape.apex), shape.apex].map((place) => ({ place, words: landmarkWords.apex })) };
    case "frontWaistLength":
    case "backWaistLength":
      return waistLengthRoute(name, shape);
    case "napeToWaist":
      return { ...plainRoute, view: "back", tapes: [[nape, at(0, 120), at(0, shape.drops.waist)]], landmarks: [{ place: nape, words: landmarkWords.nape }, { place: at(0, shape.drops.waist), words: landmarkWords.waist }], guides: [waistGuide(shape)] };
    case "waistToHighHip":
      return hipRoute("highHip", shape);
    case "waistToFullHip":
      return hipRoute("fullHip", shape);
    case "waistToFloorFront":
    case "waistToFloorBack":
    case "waistToFloorLeft":
    case "waistToFloorRight":
      return floorRoute(name, shape);
    case "shoulderLength":
      return shoulderRoute(shape, ["left", "right"]);
    case "leftShoulderLength":
      return shoulderRoute(shape, ["left"]);
    case "rightShoulderLength":
      return shoulderRoute(shape, ["right"]);
    case "shoulderDrop":
      return shoulderDropRoute(shape);
    case "acrossBack":
    case "upperBackWidth":
      return backRoute(name, shape);
    case "neckGirth":
      return neckRoute(shape);
    default:
      return armRoute(name, shape);
  }
}

type Side = "left" | "right";

const onSide = (side: Side, line: readonly PicturePoint[]): readonly PicturePoint[] => (side === "left" ? line : mirrorLine(line));

function chestRoute({ neckSide, apex }: FigureShape, sides: readonly Side[]): MeasureRoute {
  const line = [neckSide, between(neckSide, apex, 0.5), apex].map((point, i) => (i === 1 ? at(point.x - 3, point.y) : point));
  const ends = (side: Side): readonly Landmark[] =>
    onSide(side, [neckSide, apex]).map((place, i) => ({ place, words: i === 0 ? landmarkWords.neckSide : landmarkWords.apex }));
  return { ...plainRoute, tapes: sides.map((side) => onSide(side, line)), landmarks: sides.flatMap(ends) };
}

function waistLengthRoute(name: "frontWaistLength" | "backWaistLength", { neckSide, apex, drops }: FigureShape): MeasureRoute {
  const isFront = name === "frontWaistLength";
  const x = isFront ? apex.x : 74;
  const line = isFront ? [neckSide, between(neckSide, apex, 0.5), apex, at(x, drops.waist)] : [neckSide, at(70, 60), at(x, 150), at(x, drops.waist)];
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

const waistGuide = ({ half, drops }: FigureShape): MeasureRoute["guides"][number] => ({
  role: "seam",
  line: [at(-half(drops.waist), drops.waist), at(half(drops.waist), drops.waist)],
});

function hipRoute(to: "highHip" | "fullHip", { drops, front, back }: FigureShape): MeasureRoute {
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
function floorRoute(name: "waistToFloorFront" | "waistToFloorBack" | "waistToFloorLeft" | "waistToFloorRight", shape: FigureShape): MeasureRoute {
  const { drops, front, back, half, floor } = shape;
  const steps = [0, 40, 80, 120, 160, 200, 240].map((step) => drops.waist + step);
  const hanging = (reach: (drop: number) => number, way: 1 | -1): readonly PicturePoint[] => {
    const furthest = Math.max(...steps.map(reach));
    const from = steps.findIndex((drop) => reach(drop) >= furthest);
    return [...steps.slice(0, from + 1).map((drop) => at(way * (reach(drop) + 9), drop)), at(way * (furthest + 9), floor)];
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
    guides: isFace ? [waistGuide(shape)] : [{ role: "seam", line: [at(-front(drops.waist), drops.waist), at(back(drops.waist), drops.waist)] }],
  };
}

function shoulderRoute({ neckSide, shoulderPoint }: FigureShape, sides: readonly Side[]): MeasureRoute {
  const line = [neckSide, at(neckSide.x + 38, neckSide.y + 19), shoulderPoint];
  return {
    ...plainRoute,
    shot: "shoulders",
    tapes: sides.map((side) => onSide(side, line)),
    landmarks: sides.flatMap((side) =>
      onSide(side, [neckSide, shoulderPoint]).map((place, i) => ({ place, words: i === 0 ? landmarkWords.neckSide : landmarkWords.shoulderPoint })),
    ),
  };
}

function shoulderDropRoute({ neckSide, shoulderPoint }: FigureShape): MeasureRoute {
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

function backRoute(name: "acrossBack" | "upperBackWidth", { neckSide, shoulderPoint, armCrease }: FigureShape): MeasureRoute {
  const line =
    name === "acrossBack"
      ? [mirror(shoulderPoint), at(-110, 22), at(-50, 4), nape, at(50, 4), at(110, 22), shoulderPoint]
      : [mirror(armCrease), at(0, armCrease.y + 5), armCrease];
  const ends = name === "acrossBack" ? landmarkWords.shoulderPoint : landmarkWords.armCrease;
  const places = [line[0] ?? neckSide, line.at(-1) ?? neckSide].map((place) => ({ place, words: ends }));
  return {
    ...plainRoute,
    view: "back",
    shot: "shoulders",
    tapes: [line],
    landmarks: name === "acrossBack" ? [...places, { place: nape, words: landmarkWords.nape }] : places,
  };
}

function neckRoute({ neckSide, throat }: FigureShape): MeasureRoute {
  const curve = (dip: number): readonly PicturePoint[] =>
    [-1, -0.85, -0.6, -0.3, 0, 0.3, 0.6, 0.85, 1].map((share) => at(share * neckSide.x, neckSide.y + (dip - neckSide.y) * (1 - share * share) ** 0.7));
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

function armRoute(name: "upperArmGirth" | "elbowGirth" | "wristGirth" | "armLength" | "shoulderToElbow", shape: FigureShape): MeasureRoute {
  const base: MeasureRoute = { ...plainRoute, shot: "arm" };
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
