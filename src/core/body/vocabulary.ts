/**
 * The one vocabulary of measurements. Body and form are measured with the same words, so that nothing is compared
 * with something else. Levels run from the top down; every length is taken with a tape unless its entry says otherwise.
 */
export const levelNames = ["bust", "underbust", "waist", "highHip", "fullHip"] as const;
export type LevelName = (typeof levelNames)[number];
export type ByLevel<Value> = { readonly [level in LevelName]: Value };

/** What a tape can read at a level: all round, the front and back from side seam to side seam, and the four quarters. */
export const levelReadingNames = [
  "Girth",
  "FrontArc",
  "BackArc",
  "LeftFrontArc",
  "RightFrontArc",
  "LeftBackArc",
  "RightBackArc",
  "Breadth",
] as const;
export type LevelReadingName = (typeof levelReadingNames)[number];
export type LevelMeasurementName = `${LevelName}${LevelReadingName}`;

/** Measurements that do not belong to one level: lengths along the body, shoulders, neck and arm. */
export const lengthNames = [
  "shoulderToApex",
  "leftShoulderToApex",
  "rightShoulderToApex",
  "apexToApex",
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
  "acrossShoulders",
  "upperBackWidth",
  "neckGirth",
  "upperArmGirth",
  "elbowGirth",
  "wristGirth",
  "armLength",
  "shoulderToElbow",
] as const;
export type LengthName = (typeof lengthNames)[number];

export type MeasurementName = LevelMeasurementName | LengthName;
export type ByMeasurement<Value> = { readonly [name in MeasurementName]: Value };

export const measurementNames: readonly MeasurementName[] = [
  ...levelNames.flatMap((level) => levelReadingNames.map((reading) => `${level}${reading}` as const)),
  ...lengthNames,
];

export const requiredMeasurementNames = ["bustGirth", "waistGirth", "fullHipGirth"] as const;
