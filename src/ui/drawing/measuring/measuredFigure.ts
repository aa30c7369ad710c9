import { levelNames } from "../../../core/body/vocabulary";
import { type FigureView, formFigure } from "../figureView";
import { circle, closedPath, openPath, segment, smoothPath, smoothRuns } from "../pathText";
import { at, mark, type Mark, mirrored, type PicturePoint } from "../scene";
import { formShape } from "./tapeRoute";

/**
 * The person of the measuring figures: an adult of average proportions, standing easily in a close-fitting top and
 * shorts, arms a little away, without a face. One outline from data serves the front and the back; the side has its
 * own. Millimetres, y the depth below the nape.
 */
const points = (numbers: readonly number[]): readonly PicturePoint[] =>
  Array.from({ length: numbers.length / 2 }, (_, i) => at(numbers[2 * i] ?? 0, numbers[2 * i + 1] ?? 0));

export const armOutside = points([
  186, 48, 206, 84, 216, 140, 227, 225, 240, 300, 250, 352, 266, 420, 285, 515, 296, 572, 305, 612, 314, 660, 311, 712,
  300, 744,
]);
export const armInside = points([
  300, 744, 289, 735, 287, 698, 283, 650, 275, 604, 267, 578, 250, 520, 228, 436, 210, 366, 197, 300, 183, 230, 170,
  185, 158, 158,
]);
const neckToShoulder = points([47, -70, 48, -40, 60, -8, 96, 10, 150, 27, 186, 48]);
const torsoSide = points([
  158, 158, 153, 200, 151, 235, 144, 296, 139, 340, 140, 370, 151, 420, 168, 470, 181, 525, 185, 570, 183, 640, 171,
  740, 151, 860, 134, 940, 128, 995, 130, 1065, 120, 1165, 101, 1270, 98, 1325, 106, 1355, 116, 1380, 108, 1392, 72,
  1393, 54, 1386,
]);
const innerLeg = points([
  54, 1386, 61, 1350, 64, 1310, 65, 1260, 55, 1165, 43, 1065, 49, 995, 50, 940, 43, 860, 22, 730, 4, 655, 0, 652,
]);

const half = [neckToShoulder, armOutside, armInside, torsoSide, innerLeg];

const standing = smoothRuns([...half, ...half.toReversed().map(mirrored)]);

const head = smoothRuns([
  points([
    0, -228, 52, -212, 73, -160, 70, -112, 56, -68, 28, -34, 0, -26, -28, -34, -56, -68, -70, -112, -73, -160, -52,
    -212, 0, -228,
  ]),
]);
const hairFront = smoothPath(points([-72, -150, -50, -186, -8, -196, 34, -186, 72, -150]));
const hairBack = smoothPath(points([-68, -108, -40, -76, 0, -66, 40, -76, 68, -108]));
const bun = circle(at(0, -226), 30);

const bothSides = (numbers: readonly number[]): string => {
  const line = points(numbers);
  return smoothPath(line) + smoothPath(mirrored(line));
};

const armhole = points([148, 27, 138, 70, 142, 118, 157, 160]);
const hem = points([178, 690, 130, 702, 70, 704, 14, 694]);
const inseam = points([14, 694, 4, 655, 0, 652]);
const garment = (neckline: readonly PicturePoint[]): string => {
  const right = [points([64, -5, 148, 27]), armhole, torsoSide.slice(0, 11), points([183, 640, 178, 690]), hem, inseam];
  return smoothRuns([neckline, ...right, ...right.toReversed().map(mirrored)]);
};
const frontGarment = garment(points([-64, -5, -54, 50, -30, 90, 0, 102, 30, 90, 54, 50, 64, -5]));
const backGarment = garment(points([-64, -5, -44, 20, 0, 30, 44, 20, 64, -5]));
const frontLines = bothSides([134, 248, 122, 276, 92, 289, 60, 281, 42, 262]);
const backLines = bothSides([46, 92, 60, 138, 92, 166]) + bothSides([8, 640, 44, 655, 88, 642]);

const sideChest = points([
  -66, 98, -104, 168, -148, 222, -150, 240, -138, 274, -124, 298, -121, 336, -128, 370, -142, 420, -146, 468, -134, 528,
  -121, 590, -109, 660, -106, 690,
]);
const sideSeat = points([
  99, 690, 108, 660, 136, 596, 139, 560, 122, 490, 96, 420, 86, 370, 91, 322, 104, 240, 111, 170, 104, 90, 86, 36,
]);
const sideTorso = smoothRuns([
  [
    ...points([-42, -44, -39, 8, -44, 52, -66, 98]),
    ...sideChest.slice(1),
    ...points([
      -100, 760, -89, 880, -73, 945, -62, 1005, -52, 1100, -42, 1240, -44, 1305, -92, 1352, -158, 1378, -172, 1390,
    ]),
  ],
  points([-172, 1390, -100, 1394, 20, 1394, 54, 1388]),
  [
    ...points([54, 1388, 58, 1350, 44, 1290, 50, 1210, 64, 1120, 64, 1060, 46, 985, 42, 940, 60, 870, 84, 750]),
    ...sideSeat,
    ...points([58, 2, 44, -60]),
  ],
]);
const sideGarment = smoothRuns([
  sideChest,
  points([-106, 690, -40, 704, 40, 702, 99, 690]),
  sideSeat,
  points([86, 36, 40, 20, -10, 48, -66, 98]),
]);
const armFront = points([
  -30, 96, -30, 140, -18, 190, 6, 262, 32, 330, 44, 400, 48, 500, 44, 566, 32, 620, 36, 690, 56, 738,
]);
const armBack = points([
  56, 738, 80, 726, 92, 668, 86, 600, 84, 560, 102, 470, 108, 390, 100, 320, 82, 220, 66, 130, 58, 92,
]);
const armTop = points([58, 92, 44, 60, 14, 44, -16, 62, -30, 96]);
const sideHead = smoothRuns([
  points([
    -6, -228, -58, -214, -88, -172, -94, -136, -103, -114, -94, -104, -92, -72, -76, -40, -40, -30, 16, -40, 64, -86,
    86, -140, 76, -188, 40, -220, -6, -228,
  ]),
]);
const sideHair = smoothPath(points([-70, -202, -30, -172, -16, -124, 6, -92, 40, -66]));
const sideBun = circle(at(86, -194), 30);

/** The person seen from one side, ready to have a tape laid over. */
export function personMarks(view: FigureView): readonly Mark[] {
  if (view === "side") {
    return [
      mark("skin", sideTorso),
      mark("garment", sideGarment),
      mark("skinFill", smoothRuns([armTop, armFront, armBack])),
      mark("skinLine", smoothPath(armFront), smoothPath(armBack), smoothPath(armTop.slice(2))),
      mark("skin", sideBun),
      mark("skin", sideHead),
      mark("skinLine", sideHair),
    ];
  }
  return [
    mark("skin", bun),
    mark("skin", standing),
    mark("garment", view === "front" ? frontGarment : backGarment),
    mark("skin", head),
    mark("skinLine", view === "front" ? frontLines + hairFront : backLines + hairBack),
  ];
}

/**
 * The stock form of the measuring figures on its stand, with twill tape along its levels; a padded arm where one is
 * measured.
 */
export function formMarksOnStand(view: FigureView, hasArm: boolean): readonly Mark[] {
  const depths = Array.from({ length: 17 }, (_, i) => 168 + (formHem - 168) * (i / 16));
  const left = (depth: number): number => (view === "side" ? -formShape.front(depth) : -formShape.half(depth));
  const right = (depth: number): number => (view === "side" ? formShape.back(depth) : formShape.half(depth));
  const figure = formFigure(
    { left: depths.map((depth) => at(left(depth), depth)), right: depths.map((depth) => at(right(depth), depth)) },
    view,
  );
  const levels = levelNames.map((name) => {
    const depth = formShape.depths[name];
    return segment(at(left(depth), depth), at(right(depth), depth));
  });
  return [
    mark("stand", standPath),
    ...(hasArm ? [mark("skin", paddedArm)] : []),
    mark("form", figure.outline),
    mark("skinLine", figure.lines),
    mark("formLine", ...levels),
    mark("centre", figure.centre),
    mark("seam", figure.seam),
  ];
}

const formHem = 640;

const standPath =
  closedPath([at(-11, formHem - 4), at(11, formHem - 4), at(11, 1290), at(-11, 1290)]) +
  closedPath([at(-17, 820), at(17, 820), at(17, 850), at(-17, 850)]) +
  smoothPath([at(-11, 1270), at(-70, 1310), at(-170, 1390)]) +
  smoothPath([at(11, 1270), at(70, 1310), at(170, 1390)]) +
  openPath([at(0, 1290), at(0, 1393)]);

const shifted = (points: readonly PicturePoint[]): readonly PicturePoint[] =>
  points.map(({ x, y }) => at(x + formShape.armShift, y));
const paddedArm = smoothRuns([shifted(armOutside.slice(0, -4)), shifted(armInside.slice(5))]);
