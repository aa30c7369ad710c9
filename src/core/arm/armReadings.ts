import { type BeyondRange, beyondRange } from "../body/beyondRange";
import type { Measurements } from "../body/measurements";
import type { MeasurementName } from "../body/vocabulary";
import type { Millimetres } from "../units";

/** The five readings that an arm is built from; elbow to wrist is what the arm is longer than the way to the elbow. */
export const armReadingNames = [
  "upperArmGirth",
  "elbowGirth",
  "wristGirth",
  "armLength",
  "shoulderToElbow",
] as const satisfies readonly MeasurementName[];
export type ArmReadingName = (typeof armReadingNames)[number];
export type ArmReadings = { readonly [name in ArmReadingName]: Millimetres };

/**
 * Readings that cannot be of one arm: an elbow far larger or smaller than the upper arm is, a wrist larger than the elbow, an
 * elbow too near an end, an arm far too short for its girth.
 */
export type ArmProblem = BeyondRange<"elbowBesideUpperArm" | "wristBesideElbow" | "elbowPlace" | "lengthBesideGirth">;

/**
 * What was measured of a body, seen as an arm: whole; or unread, with what is missing, for nothing is guessed; or readings
 * that contradict one another.
 */
export type ArmReading =
  | { readonly kind: "whole"; readonly readings: ArmReadings }
  | { readonly kind: "unread"; readonly missing: readonly ArmReadingName[] }
  | { readonly kind: "contradicting"; readonly problems: readonly ArmProblem[] };

export function armReading(measurements: Measurements): ArmReading {
  const missing = armReadingNames.filter((name) => measurements[name] === undefined);
  if (!isWhole(measurements)) return { kind: "unread", missing };
  const problems = contradictions(measurements);
  return problems.length > 0 ? { kind: "contradicting", problems } : { kind: "whole", readings: measurements };
}

const isWhole = (measurements: Measurements): measurements is Measurements & ArmReadings =>
  armReadingNames.every((name) => measurements[name] !== undefined);

/**
 * A bent elbow may be larger than a slim upper arm: US Army 1988 women have elbows of 207 to 270 mm (mean 238, SD 13.4, within
 * 2.4 SD) beside upper arms from 246 on (NHANES, p5). A full upper arm may have more than twice the girth of its elbow. A
 * judgement.
 */
const [leastElbow, mostElbow] = [0.4, 1.25];

/** A wrist is smaller than its elbow, and not by three quarters. A judgement. */
const leastWrist = 0.25;

/**
 * Shoulder to elbow as a share of the whole arm: US Army 2012 women have 311 of 552 mm in the mean, 0.56 (Gordon et al. 2014,
 * NATICK/TR-15/007). Beyond these shares the tape ended somewhere else. A judgement.
 */
const [leastUpperShare, mostUpperShare] = [0.45, 0.67];

/** Around the upper arm is no more than so many times the way to the elbow; 429 over 311 mm are 1.4 (NHANES, p95, over the mean above). A judgement. */
const mostGirth = 3;

function contradictions(arm: ArmReadings): readonly ArmProblem[] {
  const { upperArmGirth, elbowGirth, wristGirth, armLength, shoulderToElbow } = arm;
  return [
    ...beyondRange(
      "elbowBesideUpperArm",
      ["elbowGirth", "upperArmGirth"],
      elbowGirth,
      leastElbow * upperArmGirth,
      mostElbow * upperArmGirth,
    ),
    ...beyondRange("wristBesideElbow", ["wristGirth", "elbowGirth"], wristGirth, leastWrist * elbowGirth, elbowGirth),
    ...beyondRange(
      "elbowPlace",
      ["shoulderToElbow", "armLength"],
      shoulderToElbow,
      leastUpperShare * armLength,
      mostUpperShare * armLength,
    ),
    ...beyondRange(
      "lengthBesideGirth",
      ["shoulderToElbow", "upperArmGirth"],
      shoulderToElbow,
      upperArmGirth / mostGirth,
      Math.max(shoulderToElbow, armLength),
    ),
  ];
}
