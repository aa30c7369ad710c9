import { levelNames } from "../../../core/body/vocabulary";
import type { FigureView } from "../figureView";
import { formFigure } from "../formFigure";
import { closedPath, openPath, segment, smoothPath, smoothRuns } from "../pathText";
import { at, type PicturePoint } from "../picturePoint";
import { mark, type Mark } from "../scene";
import { formShape } from "./figureShape";
import { armInside, armOutside } from "./personOutline";

/** The stock form of the measuring figures on its stand, with twill tape along its levels; a padded arm where one is measured. */
export function formMarksOnStand(view: FigureView, hasArm: boolean): readonly Mark[] {
  const drops = Array.from({ length: 17 }, (_, i) => 168 + (formHem - 168) * (i / 16));
  const left = (drop: number): number => (view === "side" ? -formShape.front(drop) : -formShape.half(drop));
  const right = (drop: number): number => (view === "side" ? formShape.back(drop) : formShape.half(drop));
  const figure = formFigure(
    { left: drops.map((drop) => at(left(drop), drop)), right: drops.map((drop) => at(right(drop), drop)) },
    view,
  );
  const levels = levelNames.map((name) => {
    const drop = formShape.drops[name];
    return segment(at(left(drop), drop), at(right(drop), drop));
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
