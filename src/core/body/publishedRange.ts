import { mm, type Millimetres } from "../units";
import type { LengthName, LevelName } from "./vocabulary";

/**
 * What surveys of women found, as the low and the high end they published (mm), with the place it was read. A reading
 * outside the widened range may be right and is only worth a second look. Where a survey gave mean and standard
 * deviation, the ends are 2.33 of them away: the first and the ninety-ninth of a hundred.
 */
const surveySources = {
  army2012: "US Army Anthropometric Survey 2010-2012, women: Gordon et al. 2014, technical report NATICK/TR-15/007",
  army1988: "US Army anthropometric survey 1988, women, n 2208: Gordon et al. 1989, technical report NATICK/TR-89/044",
  spanish:
    "Spanish women's survey, sample of 600: Alemany et al., Proc. 2010 Intl Conf. 3D Body Scanning Technologies, 307-315",
  nhanes: "NHANES 2017-March 2020, women 18 and over, n 4221",
  practice: "common practice, no source",
} as const;
export type SurveySource = keyof typeof surveySources;

export interface PublishedRange {
  readonly low: number;
  readonly high: number;
  readonly sources: readonly SurveySource[];
  /** Which figures these are, for whoever looks them up. */
  readonly note: string;
}

const range = (low: number, high: number, sources: readonly SurveySource[], note: string): PublishedRange => ({
  low,
  high,
  sources,
  note,
});

export const publishedGirths: { readonly [level in LevelName]: PublishedRange } = {
  bust: range(784, 1194, ["army2012", "spanish"], "bust girth: p1 of the first, p95 of the second"),
  underbust: range(
    696,
    1056.6,
    ["army1988", "spanish"],
    "underbust p5; bust p95 of the second less the mean bust minus underbust of the first",
  ),
  waist: range(637, 1126, ["army1988", "spanish"], "natural waist p5; waist p95"),
  highHip: range(
    637,
    1263,
    ["army1988", "spanish"],
    "not surveyed: between the natural waist's p5 and the full hip's p95",
  ),
  fullHip: range(867, 1263, ["army2012", "spanish"], "hip girth: p1 of the first, p95 of the second"),
};

export const publishedBreadths: { readonly [level in LevelName]: PublishedRange } = {
  bust: range(232, 313, ["army2012"], "bust breadth p1 and p99"),
  underbust: range(232, 385, ["army2012"], "not surveyed: between bust and waist breadth"),
  waist: range(232, 385, ["army2012"], "waist breadth at the navel, p1 and p99"),
  highHip: range(232, 423, ["army2012"], "not surveyed: between waist and hip breadth"),
  fullHip: range(293, 423, ["army2012"], "hip breadth p1 and p99"),
};

/** Depth straight through from front to back. */
export const publishedDepths: { readonly [level in LevelName]: PublishedRange } = {
  bust: range(190, 321, ["army2012"], "bust depth p1 and p99"),
  underbust: range(159, 321, ["army2012"], "not surveyed: between waist and bust depth"),
  waist: range(159, 300, ["army2012"], "waist depth at the navel, p1 and p99"),
  highHip: range(159, 300, ["army2012"], "not surveyed: between waist and hip depth"),
  fullHip: range(186, 299, ["army2012"], "hip depth p1 and p99"),
};

/** How far each level lies straight below the nape. */
export const publishedBelowNape: { readonly [level in LevelName]: PublishedRange } = {
  bust: range(182, 285, ["army1988"], "nape to apex, vertical: mean 233.6, SD 22.1"),
  underbust: range(214, 345, ["army1988", "spanish"], "the bust's and 32 to 60 mm more: apex above underbust"),
  waist: range(300, 415.5, ["army1988", "spanish"], "vertical p5 of the first, p95 of the second"),
  highHip: range(
    368,
    551.5,
    ["spanish"],
    "the waist's and half of waist to full hip, as the standard places the level",
  ),
  fullHip: range(437, 687.5, ["spanish"], "the waist's and waist to the fullest hip p5 and p95"),
};

const napeHeight = range(1263, 1533, ["army2012"], "height of the nape p1 and p99");

/** How high each level of a person lies above the floor: the nape's height less the distance below it. */
export const publishedHeights: { readonly [level in LevelName]: PublishedRange } = {
  bust: range(1049, 1304, ["army2012"], "bust height p1 and p99"),
  underbust: range(1004, 1259, ["army2012", "spanish"], "the bust's less 45 mm: apex above underbust"),
  waist: range(
    869,
    1173.4,
    ["army2012", "army1988"],
    "height of the navel p1; its p99 and the mean from natural waist",
  ),
  highHip: range(799, 1060, ["army2012"], "not surveyed: between hip and navel height"),
  fullHip: range(729, 946, ["army2012"], "hip height p1 and p99"),
};

/** The share of a girth that an arc from side seam to side seam takes; a quarter takes half of that. */
export const publishedArcShare = { low: 0.42, high: 0.6, source: "practice" } as const;

/** The front share of the waist: p5 and p95 of 600 women, split at the widest point of the side. */
export const publishedWaistFrontShare = { low: 0.504, high: 0.574, source: "spanish" } as const;

const shoulderToApex = range(
  234,
  348,
  ["army1988", "spanish"],
  "neck side to apex: tape p5; straight p95 of the larger busts",
);
const shoulderLength = range(114, 160, ["army2012"], "shoulder length p1 and p99");
const waistToFloor = range(
  869,
  1173.4,
  ["army2012", "army1988"],
  "height of the navel p1; its p99 and the mean from natural waist to navel",
);

const shoulderDrop = range(19, 75, ["spanish"], "neck side to shoulder point, vertical, mean 47, SD 12");

export const publishedLengths: { readonly [name in LengthName]: PublishedRange } = {
  shoulderToApex,
  leftShoulderToApex: shoulderToApex,
  rightShoulderToApex: shoulderToApex,
  napeHeight,
  lowerEdgeBelowNape: range(500, 800, ["practice"], "nape to the lower edge of a torso form"),
  apexToUnderbust: range(32, 90, ["spanish"], "apex above underbust, mean 59.7, SD 13.8"),
  lowerBreastGirth: range(700, 1150, ["practice"], "between bust and underbust girth"),
  upperChestGirth: range(760, 1100, ["practice"], "close under the arms, above the fullness of the bust"),
  upperChestFrontArc: range(340, 600, ["practice"], "about half of the upper chest girth"),
  upperChestBelowNape: range(150, 215, ["practice"], "nape to just below the underarm, vertical"),
  acrossChest: range(300, 400, ["practice"], "front arm crease to front arm crease"),
  apexToApex: range(139.4, 247, ["spanish"], "apex to apex, mean 193.2, SD 23.1"),
  napeToWaist: range(327, 415.5, ["army1988", "spanish"], "tape to the natural waist p5; vertical p95"),
  waistToHighHip: range(68.5, 136, ["spanish"], "half of waist to full hip, as the standard places the level"),
  waistToFullHip: range(137, 272, ["spanish"], "waist to the fullest hip p5 and p95"),
  frontWaistLength: range(370, 520, ["practice"], "neck side over the apex to the waist"),
  sideNeckToWaistBack: range(340, 460, ["practice"], "neck side down the back to the waist"),
  waistToFloorFront: waistToFloor,
  waistToFloorBack: waistToFloor,
  waistToFloorLeft: waistToFloor,
  waistToFloorRight: waistToFloor,
  shoulderLength,
  leftShoulderLength: shoulderLength,
  rightShoulderLength: shoulderLength,
  shoulderDrop,
  leftShoulderDrop: shoulderDrop,
  rightShoulderDrop: shoulderDrop,
  acrossShoulders: range(350, 450, ["practice"], "shoulder point to shoulder point over the nape"),
  upperBackWidth: range(310, 430, ["practice"], "back arm crease to back arm crease"),
  neckGirth: range(329, 423, ["army2012"], "neck base girth p1 and p99"),
  upperArmGirth: range(246, 429, ["nhanes"], "relaxed upper arm p5 and p95"),
  elbowGirth: range(207.1, 312, ["army1988", "army2012"], "elbow, mean 238.3, SD 13.4; flexed forearm p99"),
  wristGirth: range(138, 174, ["army2012"], "wrist girth p1 and p99"),
  armLength: range(476.6, 617.8, ["army1988"], "sleeve outseam, mean 547.2, SD 30.3"),
  shoulderToElbow: range(271, 352, ["army2012"], "shoulder to elbow p1 and p99"),
  armholePlateHeight: range(105, 165, ["practice"], "the flat end of a form's shoulder, top to bottom"),
  armholePlateBreadth: range(80, 130, ["practice"], "the flat end of a form's shoulder, front to back"),
};

/**
 * Widened for the public: the surveys are of soldiers or end at the ninety-fifth of a hundred, and half the people who
 * need this work are outside them. A tenth less at the low end, a fifth more at the high end; a judgement.
 */
export const widened = ({
  low,
  high,
}: Pick<PublishedRange, "low" | "high">): { readonly least: Millimetres; readonly most: Millimetres } => ({
  least: mm(0.9 * low),
  most: mm(1.2 * high),
});
