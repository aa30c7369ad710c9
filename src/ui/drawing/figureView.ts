import type { QuarterLengths } from "../../core/geometry/outline";
import { pictureWords } from "../../text/pictures";
import { closedPath, segment, smoothPath, smoothRuns } from "./pathText";
import { at, between, mark, type Mark, mirrored, type PicturePoint } from "./scene";

/**
 * The three ways to look at a figure. From the front the wearer's left is on the right of the page, from the back on
 * the left; from her left side the front is on the left of the page.
 */
export const figureViews = ["front", "back", "side"] as const;
export type FigureView = (typeof figureViews)[number];

export const viewWords: { readonly [view in FigureView]: string } = {
  front: pictureWords.frontView,
  back: pictureWords.backView,
  side: pictureWords.sideView,
};

/** How far to the right of the page a place in the level plane lies (x to the wearer's left, y to the front). */
export const acrossPage = (view: FigureView, x: number, y: number): number =>
  view === "front" ? x : view === "back" ? -x : -y;

/** The part of a section that faces the reader, as signed distances along the surface from centre front. */
export function facingStretch(
  view: FigureView,
  quarters: QuarterLengths,
): { readonly from: number; readonly to: number } {
  const { leftFront, rightFront, leftBack, rightBack } = quarters;
  switch (view) {
    case "front":
      return { from: -rightFront, to: leftFront };
    case "back":
      return { from: leftFront, to: leftFront + leftBack + rightBack };
    case "side":
      return { from: 0, to: leftFront + leftBack };
  }
}

/**
 * The dress form itself from one side: neck cap, shoulders and arm plates of our own drawing, joined to the silhouette of
 * its measured sections, on a pole. Page coordinates: x across, y the depth below the nape.
 */
interface FormFigure {
  readonly outline: string;
  /** Arm plates, the neck seam and the other lines on the form. */
  readonly lines: string;
  readonly pole: string;
  readonly centre: string;
  readonly seam: string;
}

/** Where the drawn armhole ends and the measured silhouette begins (depth below the nape, mm). */
export const armholeDepth = 168;

/** The two edges of the form from the armhole down, left and right on the page, from the top. */
interface FormEdges {
  readonly left: readonly PicturePoint[];
  readonly right: readonly PicturePoint[];
}

export function formFigure(edges: FormEdges, view: FigureView): FormFigure {
  const left = edges.left.filter(({ y }) => y >= armholeDepth);
  const right = edges.right.filter(({ y }) => y >= armholeDepth);
  const [foot, otherFoot] = [left.at(-1) ?? at(0, 0), right.at(-1) ?? at(0, 0)];
  const middle = between(foot, otherFoot, 0.5);
  const pole = closedPath([
    at(middle.x - 11, foot.y),
    at(middle.x + 11, foot.y),
    at(middle.x + 11, foot.y + 70),
    at(middle.x - 11, foot.y + 70),
  ]);
  const hem = [otherFoot, at(middle.x, foot.y + 5), foot];
  return { pole, ...(view === "side" ? sideForm(left, right, hem) : faceForm(view, left, right, hem)) };
}

const neckHalf = 58;

function faceForm(
  view: FigureView,
  left: readonly PicturePoint[],
  right: readonly PicturePoint[],
  hem: readonly PicturePoint[],
): Omit<FormFigure, "pole"> {
  const underarm = right[0] ?? at(0, armholeDepth);
  const tip = underarm.x + 36;
  const cap = [at(neckHalf - 8, -54), at(neckHalf - 7, -26), at(neckHalf, -6)];
  const shoulder = [at(neckHalf, -6), at(neckHalf + 44, 12), at(tip - 14, 34), at(tip, 44)];
  const armhole = [at(tip, 44), at(tip - 3, 78), at(tip - 17, 122), at(tip - 31, 154), underarm];
  const plate = [at(tip - 6, 46), at(tip - 30, 92), at(tip - 42, 134), at(tip - 37, 164)];
  const dip = view === "front" ? 70 : 8;
  return {
    outline: smoothRuns([
      cap,
      shoulder,
      armhole,
      right,
      hem,
      left.toReversed(),
      mirrored(armhole),
      mirrored(shoulder),
      mirrored(cap),
      [at(-neckHalf + 8, -54), at(0, -58), at(neckHalf - 8, -54)],
    ]),
    lines: neckLine(dip) + smoothPath(plate) + smoothPath(mirrored(plate)),
    centre: segment(at(0, dip), at(0, hem[1]?.y ?? 0)),
    seam: "",
  };
}

const neckLine = (dip: number): string =>
  smoothPath([
    at(-neckHalf, -6),
    at(-neckHalf * 0.6, dip * 0.72),
    at(0, dip),
    at(neckHalf * 0.6, dip * 0.72),
    at(neckHalf, -6),
  ]);

function sideForm(
  left: readonly PicturePoint[],
  right: readonly PicturePoint[],
  hem: readonly PicturePoint[],
): Omit<FormFigure, "pole"> {
  const [chest, back] = [left[0] ?? at(0, armholeDepth), right[0] ?? at(0, armholeDepth)];
  const nape = at(back.x * 0.58, 2);
  const throat = at(nape.x - 104, 66);
  const neckTop = [at(throat.x - 2, -32), at(nape.x - 14, -54)];
  const plate = Array.from({ length: 25 }, (_, i) => {
    const turn = (i / 24) * 2 * Math.PI;
    return at(4 + 44 * Math.cos(turn), 108 + 62 * Math.sin(turn));
  });
  return {
    outline: smoothRuns([
      neckTop,
      [at(nape.x - 14, -54), at(nape.x - 7, -24), nape, at(back.x * 0.86, 52), at(back.x * 1.0, 110), ...right],
      hem,
      [...left.toReversed(), between(chest, throat, 0.45), throat],
      [throat, at(throat.x + 5, 20), at(throat.x - 2, -32)],
    ]),
    lines: smoothPath(plate) + smoothPath([throat, at(throat.x + 42, 22), nape]) + segment(at(-8, 11), at(2, 46)),
    centre: "",
    seam: segment(at(0, 172), at(0, hem[1]?.y ?? 0)),
  };
}

export const formMarks = (figure: FormFigure): readonly Mark[] => [
  mark("stand", figure.pole),
  mark("form", figure.outline),
  mark("skinLine", figure.lines),
  mark("centre", figure.centre),
  mark("seam", figure.seam),
];
