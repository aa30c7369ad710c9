import { type Cloth, cutFactors } from "../cover/cloth";
import type { ArmLineName } from "../pattern/patternPart";
import { type Millimetres, mm, type Radians, type Ratio, radians } from "../units";
import { armCap, type ArmholePlate, type CapRefusal, type CapWish } from "./armCap";
import type { ArmReadings } from "./armReadings";
import { aroundOval, type Oval, oval } from "./oval";

/** How an arm is to be made; the left one of two pieces with an oval of its own, for a plate that was not measured, if nothing else is said. */
export interface ArmWish {
  readonly side: "left" | "right";
  /** An upper and an under piece with seams along the front and the back; or one piece with a seam along the front and two darts. */
  readonly cut: "twoPieces" | "onePiece";
  readonly cap: CapWish;
  readonly plate: ArmholePlate;
}

export const usualArm: ArmWish = {
  side: "left",
  cut: "twoPieces",
  cap: "ownOval",
  plate: { height: null, breadth: null },
};

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
  /** The share that both caps together are longer than the edge of the cap disc: 0, or what is gathered in. */
  readonly capEase: Ratio;
  /** Why the cap is not gathered onto the plate although it was wished; null where it is as wished. */
  readonly capRefused: CapRefusal | null;
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
 * The arm of these readings in a cloth, with the cap that `armCap` gives it. Knit is cut narrower by its stretch and longer by what it
 * loses along the grain; the cards keep the body's size. The cap disc as it is cut has the edge that the caps as they are cut
 * are to be sewn to.
 */
export function softArm(readings: ArmReadings, cloth: Cloth, wish: ArmWish = usualArm): SoftArm {
  const { across, along } = cutFactors(cloth);
  const girths = { upperArm: readings.upperArmGirth, elbow: readings.elbowGirth, wrist: readings.wristGirth };
  const { shoulderToElbow, armLength } = readings;
  const thick = girths.upperArm / Math.PI;
  const cap = armCap(thick, shoulderToElbow, wish.cap, wish.plate);
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
    capHeight: mm(cap.height * along),
    capEase: cap.ease,
    capRefused: cap.refused,
    capDisc: cutDisc(oval(thick * across, Math.hypot(thick * across, cap.height * along)), cap),
    wristDisc: oval(wrist * across, wrist * across),
    capCard: cap.oval,
    wristCard: oval(wrist, wrist),
    bend: usualBend,
  };
}

/** The disc of a cap that ends in this oval as it is cut: that very oval; or where there is ease, one like the card's. */
function cutDisc(own: Oval, { oval: card, ease }: { readonly oval: Oval; readonly ease: number }): Oval {
  if (ease === 0) return own;
  const scale = aroundOval(own) / ((1 + ease) * aroundOval(card));
  return oval(scale * card.breadth, scale * card.height);
}
