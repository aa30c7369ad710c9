import type { SoftArm } from "../../../core/arm/softArm";
import { heightCurve } from "../../../core/geometry/heightCurve";
import { circle, closedPath, openPath, smoothPath, smoothRuns } from "../pathText";
import { at, between, type Mark, mark, type PicturePoint, type Scene } from "../scene";
import { frontTorso, shoulderPlace } from "../torso/torsoFigure";
import type { TorsoShape } from "../torso/torsoShape";

/** A filled arm on the form, seen from the front: its cap against the armhole, its tab over the shoulder, a bow at the armhole. */
interface ArmHangsPicture {
  readonly shape: TorsoShape;
  readonly arm: SoftArm;
  readonly title: string;
  readonly description: string;
}

export function armHangsScene({ shape, arm, title, description }: ArmHangsPicture): Scene {
  const hung = hungArm(shape, arm);
  const side = arm.wish.side === "left" ? 1 : -1;
  const onSide = (points: readonly PicturePoint[]) => points.map(({ x, y }) => at(side * x, y));
  const lit = hung.outer.slice(2);
  const shade = lit.map(({ x, y }, i) => at(x - 0.3 * Math.min(1, i / 3) * hung.width(y), y));
  const wrist = hung.wrist;
  const right = Math.max(...hung.outer.map(({ x }) => x)) + 24;
  const left = -shape.neckHalf - 30;
  return {
    title,
    description,
    frame: { x: side === 1 ? left : -right, y: -92, width: right - left, height: wrist.y + 30 + 92 },
    textSize: 26,
    marks: [
      ...frontTorso(shape),
      mark("torso", smoothRuns([onSide(hung.outer), onSide(hung.inner)])),
      mark("torsoShade", smoothRuns([onSide(lit), onSide(shade.toReversed())])),
      mark("torsoPlate", closedPath(onSide(ellipse(wrist, hung.width(wrist.y) / 2, 7)))),
      mark("torsoHair", smoothPath(onSide(hung.seam))),
      mark("torsoHair", smoothPath(onSide(hung.elbow))),
      mark("tapeNow", smoothRuns(tabOver(shape, hung).map(onSide))),
      mark("thread", openPath(onSide(tabStitches(shape, hung)))),
      ...bow(onSide([hung.tie])[0] ?? hung.tie, side),
    ],
    labels: [],
  };
}

interface HungArm {
  /** From the shoulder tip down the outer side to the wrist, and from there up the inner one to the bottom of the armhole. */
  readonly outer: readonly PicturePoint[];
  readonly inner: readonly PicturePoint[];
  readonly seam: readonly PicturePoint[];
  readonly elbow: readonly PicturePoint[];
  readonly wrist: PicturePoint;
  /** Where the ties meet at the front of the armhole. */
  readonly tie: PicturePoint;
  readonly width: (depth: number) => number;
}

/** The arm hangs straight down, a little away from the body; it is as thick as its girths are around. */
function hungArm(shape: TorsoShape, { girths, upper, lower, capHeight }: SoftArm): HungArm {
  const { shoulderHalf, shoulderTip, armholeBottom, half } = shape;
  const thick = (girth: number) => girth / Math.PI;
  const [top, elbow, wrist] = [shoulderTip, shoulderTip + upper, shoulderTip + upper + lower];
  const pit = Math.max(armholeBottom, top + capHeight);
  const width = heightCurve(
    [top, pit, (pit + elbow) / 2, elbow, wrist],
    [girths.upperArm, girths.upperArm, girths.upperArm, girths.elbow, girths.wrist].map(thick),
  );
  const inner = Math.max(shoulderHalf - 14, half(armholeBottom) + 4);
  const middle = (depth: number) => inner + width(pit) / 2 + awayFromBody * (depth - top);
  const depths = (from: number, to: number) => Array.from({ length: 13 }, (_, i) => from + ((to - from) * i) / 12);
  const armpit = at(half(armholeBottom) - 1, armholeBottom);
  const outer = [
    at(shoulderHalf - 6, top - 7),
    at(shoulderHalf + 0.3 * width(pit), top + 3),
    at(middle(top) + 0.36 * width(pit), top + 24),
    ...depths(top + 78, wrist).map((depth) => at(middle(depth) + width(depth) / 2, depth)),
  ];
  const inside = depths(pit + 90, wrist).map((depth) => at(middle(depth) - width(depth) / 2, depth));
  return {
    outer,
    inner: [...inside.toReversed(), ...[0.3, 0.6, 1].map((share) => between(inside[0] ?? armpit, armpit, share))],
    seam: [
      at(shoulderHalf + 0.16 * width(pit), top + 34),
      ...[pit + 40, elbow, wrist].map((depth) => at(middle(depth), depth)),
    ],
    elbow: [-0.5, -0.2, 0.2, 0.5].map((share) =>
      at(middle(elbow) + share * width(elbow), elbow + 8 - 32 * share * share),
    ),
    wrist: at(middle(wrist), wrist),
    tie: at(0.9 * shoulderHalf + 4, (top + armholeBottom) / 2 + 8),
    width,
  };
}

/** Farther out with every millimeter down, so that the hip is clear of the wrist. */
const awayFromBody = 0.075;

/** The tab's upper edge as it is seen: along the top of the shoulder, and on down over the top of the cap. */
function tabEdge(shape: TorsoShape, { outer }: HungArm): readonly PicturePoint[] {
  const [, over = at(0, 0), down = at(0, 0), below = down] = outer;
  const along = [0.42, 0.62, 0.85].map((share) => shoulderPlace(shape, share));
  return [...along, over, down, between(down, below, 0.5)].map(({ x, y }) => at(x, y - tabThick));
}

/** It lies so far above what it lies on (mm). */
const tabThick = 4;

/** Both long edges, the second one back: the tab narrows to the eye where it turns down. */
function tabOver(shape: TorsoShape, hung: HungArm): readonly (readonly PicturePoint[])[] {
  const edge = tabEdge(shape, hung);
  const lower = edge.map((point, i) => {
    const share = i / (edge.length - 1);
    return at(point.x - 4 - 36 * share, point.y + tabSeen * (1 - 0.6 * share));
  });
  return [edge, lower.toReversed()];
}

/** So much of the tab's width is seen from the front (mm). */
const tabSeen = 46;

/** Where the tab is sewn to hook-and-loop tape, near its inner end. */
function tabStitches(shape: TorsoShape, hung: HungArm): readonly PicturePoint[] {
  const [first = at(0, 0), , third = at(0, 0)] = tabEdge(shape, hung);
  const [from, to] = [between(first, third, 0.15), between(first, third, 0.85)];
  const [top, bottom] = [10, tabSeen - 14];
  return [
    at(from.x - 1, from.y + top),
    at(to.x - 1, to.y + top),
    at(to.x - 4, to.y + bottom),
    at(from.x - 4, from.y + bottom),
    at(from.x - 1, from.y + top),
  ];
}

/** Two loops, two ends and a knot. */
function bow(knot: PicturePoint, side: 1 | -1): readonly Mark[] {
  const place = (x: number, y: number) => at(knot.x + side * x, knot.y + y);
  const loop = (way: 1 | -1) =>
    smoothPath([place(0, 0), place(way * 16, -11), place(way * 27, -3), place(way * 16, 7), place(0, 0)]);
  return [
    mark("tapeOn", loop(1), loop(-1)),
    mark(
      "torsoLine",
      smoothPath([place(0, 0), place(9, 18), place(7, 34)]),
      smoothPath([place(0, 0), place(-8, 17), place(-13, 30)]),
    ),
    mark("dot", circle(knot, 4.5)),
  ];
}

const ellipse = (middle: PicturePoint, across: number, down: number): readonly PicturePoint[] =>
  Array.from({ length: 32 }, (_, i) =>
    at(middle.x + across * Math.cos((i * Math.PI) / 16), middle.y + down * Math.sin((i * Math.PI) / 16)),
  );
