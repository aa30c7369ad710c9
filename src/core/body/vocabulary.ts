/**
 * The one vocabulary of measurements. Body and form are measured with the same words, so that nothing is compared
 * with something else. Levels run from the top down; every length is taken with a tape unless its entry says otherwise.
 */
export const levelNames = ["bust", "underbust", "waist", "highHip", "fullHip"] as const;
export type LevelName = (typeof levelNames)[number];
export type ByLevel<Value> = { readonly [level in LevelName]: Value };

/** Applies one function to every level. */
export function mapLevels<Value>(value: (name: LevelName) => Value): ByLevel<Value> {
  const entries = levelNames.map((name) => [name, value(name)] as const);
  return Object.fromEntries(entries) as { [level in LevelName]: Value };
}

/** What a tape can read at a level: all around, the front and back from side seam to side seam, and the four quarters. */
export const tapeReadingNames = [
  "Girth",
  "FrontArc",
  "BackArc",
  "LeftFrontArc",
  "RightFrontArc",
  "LeftBackArc",
  "RightBackArc",
] as const;

/** Where a level lies, read vertically: straight down from the nape, or above the floor. */
export const levelPlaceNames = ["BelowNape", "Height"] as const;

/** Everything that can be measured at a level; breadth and depth go straight through the body, side to side and front to back. */
export const levelReadingNames = [...tapeReadingNames, "Breadth", "Depth", ...levelPlaceNames] as const;
export type LevelReadingName = (typeof levelReadingNames)[number];
export type LevelMeasurementName = `${LevelName}${LevelReadingName}`;

/** Measurements that do not belong to one level: lengths along the body, shoulders, neck and arm, and the plates that close a form's armholes. */
export const lengthNames = [
  "shoulderToApex",
  "leftShoulderToApex",
  "rightShoulderToApex",
  "apexToApex",
  "napeHeight",
  "lowerEdgeBelowNape",
  "apexToUnderbust",
  "lowerBreastGirth",
  "upperChestGirth",
  "upperChestFrontArc",
  "upperChestBelowNape",
  "acrossChest",
  "napeToWaist",
  "waistToHighHip",
  "waistToFullHip",
  "frontWaistLength",
  "sideNeckToWaistBack",
  "waistToFloorFront",
  "waistToFloorBack",
  "waistToFloorLeft",
  "waistToFloorRight",
  "shoulderLength",
  "leftShoulderLength",
  "rightShoulderLength",
  "shoulderDrop",
  "leftShoulderDrop",
  "rightShoulderDrop",
  "acrossShoulders",
  "upperBackWidth",
  "neckGirth",
  "upperArmGirth",
  "elbowGirth",
  "wristGirth",
  "armLength",
  "shoulderToElbow",
  "armholePlateHeight",
  "armholePlateBreadth",
] as const;
export type LengthName = (typeof lengthNames)[number];

export type MeasurementName = LevelMeasurementName | LengthName;
export type ByMeasurement<Value> = { readonly [name in MeasurementName]: Value };

export const measurementNames: readonly MeasurementName[] = [
  ...levelNames.flatMap((level) => levelReadingNames.map((reading) => `${level}${reading}` as const)),
  ...lengthNames,
];

export const requiredMeasurementNames = ["bustGirth", "waistGirth", "fullHipGirth"] as const;
