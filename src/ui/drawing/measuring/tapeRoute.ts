import { type ByLevel, levelNames } from "../../../core/body/vocabulary";
import { type HeightCurve, heightCurve } from "../../../core/geometry/heightCurve";
import type { FigureView } from "../figureView";
import { at, type PicturePoint } from "../scene";

/**
 * How a tape is led for one measurement: from which side it is seen, the tape's line where it shows and where the
 * figure hides it, lines that run straight through the air, and the landmarks with their words. Places are on the page.
 */
export interface TapeRoute {
  readonly view: FigureView;
  readonly shot: "whole" | "torso" | "shoulders" | "arm";
  readonly tapes: readonly (readonly PicturePoint[])[];
  readonly hidden: readonly (readonly PicturePoint[])[];
  /** Measured through the air between two places, with boards or a ruler to help. */
  readonly straight: readonly {
    readonly from: PicturePoint;
    readonly to: PicturePoint;
    readonly helper: readonly PicturePoint[];
  }[];
  readonly landmarks: readonly Landmark[];
  /** Side seams, centre lines or a level to show besides. */
  readonly guides: readonly { readonly role: "seam" | "centre"; readonly line: readonly PicturePoint[] }[];
}

export interface Landmark {
  readonly place: PicturePoint;
  /** Empty where its twin on the other side is named. */
  readonly words: string;
}

export const plainRoute: TapeRoute = {
  view: "front",
  shot: "torso",
  tapes: [],
  hidden: [],
  straight: [],
  landmarks: [],
  guides: [],
};

/**
 * The places of a figure that a tape is led to, for the person and for the form. Millimetres, y the depth below the nape;
 * x across the page as the wearer's left when seen from the front. Heights and breadths of the person follow the survey
 * means of estimates.ts and of US Army 2010-2012 women (Gordon et al. 2014, NATICK/TR-15/007: stature 1628, nape
 * height 1396 mm); they are for drawing only.
 */
export interface FigureShape {
  readonly depths: ByLevel<number>;
  /** Half the torso's breadth at a depth, and how far its outline goes forward and back of the side seam. */
  readonly half: HeightCurve;
  readonly front: HeightCurve;
  readonly back: HeightCurve;
  readonly neckSide: PicturePoint;
  readonly shoulderPoint: PicturePoint;
  readonly throat: PicturePoint;
  readonly apex: PicturePoint;
  readonly armCrease: PicturePoint;
  /** How much higher or lower the arm hangs and stands than the person's, for the padded arm of a form. */
  readonly armShift: number;
  readonly floor: number;
}

export const nape: PicturePoint = at(0, 0);

const depths: ByLevel<number> = { bust: 235, underbust: 296, waist: 370, highHip: 470, fullHip: 570 };
const heights = [150, ...levelNames.map((name) => depths[name]), 660];
const curve = (...values: readonly number[]): HeightCurve => heightCurve(heights, values);

export const personShape: FigureShape = {
  depths,
  half: curve(158, 151, 144, 140, 168, 185, 180),
  front: curve(92, 150, 124, 128, 146, 122, 106),
  back: curve(110, 105, 96, 86, 112, 138, 108),
  neckSide: at(60, -8),
  shoulderPoint: at(186, 48),
  throat: at(0, 60),
  apex: at(88, 235),
  armCrease: at(158, 118),
  armShift: 0,
  floor: 1393,
};

export const formShape: FigureShape = {
  depths,
  half: curve(136, 135, 124, 112, 142, 161, 161),
  front: curve(96, 136, 104, 92, 100, 98, 96),
  back: curve(100, 98, 88, 82, 98, 118, 116),
  neckSide: at(58, -6),
  shoulderPoint: at(171, 44),
  throat: at(0, 70),
  apex: at(84, 235),
  armCrease: at(142, 112),
  armShift: -15,
  floor: 1393,
};

/** The wearer's side on which something is measured. Shapes are given for her left, which is x above zero from the front. */
export type Side = "left" | "right";

export const mirror = ({ x, y }: PicturePoint): PicturePoint => at(-x, y);

export const onSide = (side: Side, line: readonly PicturePoint[]): readonly PicturePoint[] =>
  side === "left" ? line : line.map(mirror);
