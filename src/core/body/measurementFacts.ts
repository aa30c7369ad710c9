import { mm, type Millimetres } from "../units";
import {
  type PublishedRange,
  publishedArcShare,
  publishedBelowNape,
  publishedBreadths,
  publishedDepths,
  publishedGirths,
  publishedHeights,
  publishedLengths,
  type SurveySource,
  widened,
} from "./publishedRange";
import {
  type ByMeasurement,
  type LengthName,
  type LevelMeasurementName,
  type LevelName,
  type LevelReadingName,
  lengthNames,
  levelNames,
  levelReadingNames,
  requiredMeasurementNames,
} from "./vocabulary";

/**
 * What is known about each measurement besides its words: where it belongs, what it is for, what the standard calls it,
 * what no person or form can have, and what is usual.
 */
export interface MeasurementFact {
  readonly level: LevelName | null;
  readonly reading: LevelReadingName | "length";
  readonly need: "required" | "optional";
  readonly improves: Improvement;
  readonly standard: StandardTerm | null;
  /** Outside this a reading is a slip, of a body or a form. */
  readonly possible: LengthRange;
  /** Outside this a reading is worth a second look. */
  readonly usual: LengthRange;
  readonly sources: readonly SurveySource[];
}

export interface LengthRange {
  readonly least: Millimetres;
  readonly most: Millimetres;
}

/** What the plan does better once this was measured. */
export const improvements = [
  "wholePlan",
  "betweenLevels",
  "upperChest",
  "frontAndBack",
  "leftAndRight",
  "sectionShape",
  "apexPlace",
  "linePlaces",
  "levelHeights",
  "waistTilt",
  "shoulderMatch",
  "backMatch",
  "neckMatch",
  "arm",
  "cover",
] as const;
export type Improvement = (typeof improvements)[number];

/** The term of ISO 8559-1:2017 and its clause, as a public page that maps to the standard gives them. */
export interface StandardTerm {
  readonly standard: "ISO 8559-1:2017";
  readonly term: string;
  readonly clause: string;
}

const iso = (term: string, clause: string): StandardTerm => ({ standard: "ISO 8559-1:2017", term, clause });

const levelStandards: { readonly [level in LevelName]: StandardTerm } = {
  bust: iso("bust girth", "5.3.4"),
  underbust: iso("under bust girth", "5.3.8"),
  waist: iso("waist girth", "5.3.10"),
  highHip: iso("top hip girth", "5.3.12"),
  fullHip: iso("hip girth", "5.3.13"),
};

interface LengthRow {
  readonly improves: Improvement;
  readonly possible: LengthRange;
  readonly standard: StandardTerm | null;
}
const row = (improves: Improvement, least: number, most: number, standard: StandardTerm | null = null): LengthRow => ({
  improves,
  possible: { least: mm(least), most: mm(most) },
  standard,
});

/** The least possible lengths lie above what any usual one comes to when its inches are taken for centimetres. */
const lengthRows: { readonly [name in LengthName]: LengthRow } = {
  shoulderToApex: row("apexPlace", 150, 700),
  leftShoulderToApex: row("apexPlace", 150, 700),
  rightShoulderToApex: row("apexPlace", 150, 700),
  apexToApex: row("apexPlace", 100, 600),
  napeHeight: row("linePlaces", 300, 2500),
  lowerEdgeBelowNape: row("linePlaces", 300, 1500),
  apexToUnderbust: row("linePlaces", 10, 200),
  lowerBreastGirth: row("betweenLevels", 400, 2500),
  upperChestGirth: row("upperChest", 400, 2500),
  upperChestFrontArc: row("upperChest", 210, 1500),
  upperChestBelowNape: row("upperChest", 80, 450),
  acrossChest: row("upperChest", 160, 800),
  napeToWaist: row("levelHeights", 220, 800, iso("back neck point to waist", "5.4.5")),
  waistToHighHip: row("levelHeights", 45, 300),
  waistToFullHip: row("levelHeights", 90, 500),
  frontWaistLength: row("waistTilt", 220, 900),
  sideNeckToWaistBack: row("waistTilt", 220, 900),
  waistToFloorFront: row("waistTilt", 600, 1700),
  waistToFloorBack: row("waistTilt", 600, 1700),
  waistToFloorLeft: row("waistTilt", 600, 1700),
  waistToFloorRight: row("waistTilt", 600, 1700),
  shoulderLength: row("shoulderMatch", 70, 300),
  leftShoulderLength: row("shoulderMatch", 70, 300),
  rightShoulderLength: row("shoulderMatch", 70, 300),
  shoulderDrop: row("shoulderMatch", 1, 200),
  leftShoulderDrop: row("shoulderMatch", 1, 200),
  rightShoulderDrop: row("shoulderMatch", 1, 200),
  acrossShoulders: row("backMatch", 220, 800, iso("across back shoulder width", "5.4.3")),
  upperBackWidth: row("backMatch", 200, 800),
  neckGirth: row("neckMatch", 200, 900, iso("neck base girth", "5.3.3")),
  upperArmGirth: row("arm", 150, 900, iso("upper arm girth", "5.3.16")),
  elbowGirth: row("arm", 130, 700),
  wristGirth: row("arm", 100, 400, iso("wrist girth", "5.3.19")),
  armLength: row("arm", 300, 1000, iso("outer arm length", "5.7.8")),
  shoulderToElbow: row("arm", 180, 600),
  armholePlateHeight: row("arm", 60, 300),
  armholePlateBreadth: row("arm", 45, 250),
};

const isRequired = (name: LevelMeasurementName): boolean =>
  requiredMeasurementNames.some((required) => required === name);

function levelFact(level: LevelName, reading: LevelReadingName): MeasurementFact {
  const name = `${level}${reading}` as const;
  const published = publishedReading(level, reading);
  const common = { level, reading, usual: widened(published), sources: published.sources, standard: null } as const;
  if (reading === "Girth") {
    const need = isRequired(name) ? "required" : "optional";
    const improves = need === "required" ? "wholePlan" : "betweenLevels";
    return { ...common, need, improves, standard: levelStandards[level], possible: possibleGirth };
  }
  if (reading === "Breadth" || reading === "Depth")
    return { ...common, need: "optional", improves: "sectionShape", possible: possibleBreadth };
  if (reading === "BelowNape" || reading === "Height") {
    const possible = reading === "Height" ? possibleHeight : possibleBelowNape[level];
    return { ...common, need: "optional", improves: "linePlaces", possible };
  }
  return {
    ...common,
    need: "optional",
    improves: isQuarter(reading) ? "leftAndRight" : "frontAndBack",
    possible: possibleArc,
  };
}

const possibleGirth: LengthRange = { least: mm(200), most: mm(2500) };
const possibleBreadth: LengthRange = { least: mm(50), most: mm(1000) };
/** A form may be measured from any floor, a table's as well. */
const possibleHeight: LengthRange = { least: mm(1), most: mm(2300) };
/** The least lies above what a usual one comes to when its inches are taken for centimeters. */
const possibleBelowNape: { readonly [level in LevelName]: LengthRange } = {
  bust: { least: mm(140), most: mm(600) },
  underbust: { least: mm(165), most: mm(650) },
  waist: { least: mm(200), most: mm(800) },
  highHip: { least: mm(262), most: mm(950) },
  fullHip: { least: mm(326), most: mm(1100) },
};
const possibleArc: LengthRange = { least: mm(30), most: mm(2000) };

const isQuarter = (reading: LevelReadingName): boolean => reading.startsWith("Left") || reading.startsWith("Right");

function publishedReading(level: LevelName, reading: LevelReadingName): PublishedRange {
  if (reading === "Breadth") return publishedBreadths[level];
  if (reading === "Depth") return publishedDepths[level];
  if (reading === "BelowNape") return publishedBelowNape[level];
  if (reading === "Height") return publishedHeights[level];
  const girth = publishedGirths[level];
  if (reading === "Girth") return girth;
  const part = isQuarter(reading) ? 0.5 : 1;
  const { low, high, source } = publishedArcShare;
  return { ...girth, low: part * low * girth.low, high: part * high * girth.high, sources: [...girth.sources, source] };
}

const lengthFact = (name: LengthName): MeasurementFact => ({
  level: null,
  reading: "length",
  need: "optional",
  ...lengthRows[name],
  usual: widened(publishedLengths[name]),
  sources: publishedLengths[name].sources,
});

export const measurementFacts = Object.fromEntries([
  ...levelNames.flatMap((level) =>
    levelReadingNames.map((reading) => [`${level}${reading}`, levelFact(level, reading)] as const),
  ),
  ...lengthNames.map((name) => [name, lengthFact(name)] as const),
]) as ByMeasurement<MeasurementFact>;
