import { type Cloth, cutFactors } from "../cover/cloth";
import type { ArmLineName } from "../pattern/patternPart";
import { type Millimetres, mm, type Radians, radians } from "../units";
import type { ArmReadings } from "./armReadings";

/** How an arm is to be made; the left one of two pieces, for a plate that was not measured, if nothing else is said. */
export interface ArmWish {
  readonly side: "left" | "right";
  /** An upper and an under piece with seams along the front and the back; or one piece with a seam along the front and two darts. */
  readonly cut: "twoPieces" | "onePiece";
  /** How high the armhole plate of the form is; null if nobody measured it. */
  readonly plateHeight: Millimetres | null;
}

export const usualArm: ArmWish = { side: "left", cut: "twoPieces", plateHeight: null };

/** An oval, front to back and top to bottom (mm). */
export interface Oval {
  readonly breadth: Millimetres;
  readonly height: Millimetres;
}

/**
 * A soft arm for fitting sleeves, in figures (mm). `girths` is what the tape reads around the arm once it is filled; all else is
 * cloth as it is cut, flat, before it is pulled on. Everything is seen from the arm's outer side with its shoulder point
 * at the origin, y upwards and the front of the arm at positive x.
 */
export interface SoftArm {
  readonly wish: ArmWish;
  readonly cloth: Cloth;
  readonly girths: ByArmLine;
  readonly cutGirths: ByArmLine;
  /** Shoulder to elbow and elbow to wrist along the middle of the arm. */
  readonly upper: Millimetres;
  readonly lower: Millimetres;
  /** How far the shoulder point stands above the armpit line. */
  readonly capHeight: Millimetres;
  /** The cap disc and the disc at the wrist as they are cut. */
  readonly capDisc: Oval;
  readonly wristDisc: Oval;
  /** The card that goes behind each, of the size that the cloth is pulled to. */
  readonly capCard: Oval;
  readonly wristCard: Oval;
  /** How far the filled arm bends forward at the elbow. */
  readonly bend: Radians;
}

export type ByArmLine = { readonly [line in ArmLineName]: Millimetres };

/** Between 15 and 20 degrees, from memory. */
export const usualBend: Radians = radians((18 * Math.PI) / 180);

/**
 * An armhole plate that nobody measured is taken to be so high (mm). With any height the cap fits its own disc; only where the
 * disc lies on the plate changes. A judgement.
 */
const usualPlate = 130;

/** The cap disc is at least so much higher than broad, so that the cap has a height. A judgement. */
const leastSlant = 1.1;

/** The armpit line stays above this share of the way to the elbow, however high the plate. A judgement. */
const lowestArmpit = 0.6;

/**
 * The dip of the under cap is bent to no smaller radius than this (mm), or an allowance could not be cut around it. At its lowest
 * place the edge of a slanting tube of diameter d, cut off over a height c, has the radius d²/2c when it lies flat.
 */
const roundestDip = 18;

/**
 * The arm of these readings in a cloth. Its end at the shoulder is a round tube cut slanting: as broad as the upper arm is thick
 * (d), as high as the armhole plate (h) but at least 1.1 d, so the cap is √(h² − d²) high, and its edge is as long as the
 * oval's. Knit is cut narrower by its stretch and longer by what it loses along the grain; the cards keep the body's size.
 */
export function softArm(readings: ArmReadings, cloth: Cloth, wish: ArmWish = usualArm): SoftArm {
  const { across, along } = cutFactors(cloth);
  const girths = { upperArm: readings.upperArmGirth, elbow: readings.elbowGirth, wrist: readings.wristGirth };
  const { shoulderToElbow, armLength } = readings;
  const thick = girths.upperArm / Math.PI;
  const highestCap = Math.min(lowestArmpit * shoulderToElbow, (thick * thick) / (2 * roundestDip));
  const plate = Math.max(leastSlant * thick, Math.min(wish.plateHeight ?? usualPlate, Math.hypot(thick, highestCap)));
  const cap = Math.sqrt(plate * plate - thick * thick);
  const wrist = girths.wrist / Math.PI;
  return {
    wish,
    cloth,
    girths,
    cutGirths: {
      upperArm: mm(girths.upperArm * across),
      elbow: mm(girths.elbow * across),
      wrist: mm(girths.wrist * across),
    },
    upper: mm(shoulderToElbow * along),
    lower: mm((armLength - shoulderToElbow) * along),
    capHeight: mm(cap * along),
    capDisc: oval(thick * across, Math.hypot(thick * across, cap * along)),
    wristDisc: oval(wrist * across, wrist * across),
    capCard: oval(thick, plate),
    wristCard: oval(wrist, wrist),
    bend: usualBend,
  };
}

const oval = (breadth: number, height: number): Oval => ({ breadth: mm(breadth), height: mm(height) });
