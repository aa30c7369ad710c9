import type { LevelName } from "../../core/body/vocabulary";
import { formatLength, type LengthStep } from "../../core/lengthText";
import type { PieceZone } from "../../core/padding/piece";
import type { PlannedLevel, PlannedPiece, SeamShift, Shortfall } from "../../core/plan/plan";
import { type Millimetres, mm } from "../../core/units";
import type { PlanWords } from "../../document/planFile";
import { levelWords } from "./pictures";

/** The English of a plan: what a piece is called, where it goes, what to do about what stays short, in one unit. */
export const planWords = (step: LengthStep): PlanWords => ({
  pieceName: (zone, order) => `${zoneWords[zone].name} ${order}`,
  piecePlace: (piece, levels) => piecePlace(piece, levels, step),
  shortfallAdvice: (shortfall) => shortfallAdvice(shortfall, step),
  seamShift: (shift) => seamShiftText(shift, step),
});

const zoneWords: { readonly [zone in PieceZone]: { readonly name: string; readonly centre: string } } = {
  round: { name: "Round", centre: "all the way round, ends butted at a side seam" },
  front: { name: "Front piece", centre: "centre front" },
  back: { name: "Back piece", centre: "centre back" },
  leftSide: { name: "Left side piece", centre: "left side seam" },
  rightSide: { name: "Right side piece", centre: "right side seam" },
  leftCup: { name: "Left cup disc", centre: "left apex, inside the cup" },
  rightCup: { name: "Right cup disc", centre: "right apex, inside the cup" },
};

function piecePlace({ zone, rows }: PlannedPiece, levels: readonly PlannedLevel[], step: LengthStep): string {
  const { centre } = zoneWords[zone];
  if (zone === "leftCup" || zone === "rightCup") return centre;
  const drops = rows.map(({ drop }) => drop);
  const [top, bottom] = [edgePlace(Math.min(...drops), levels, step), edgePlace(Math.max(...drops), levels, step)];
  return `${centre}, top edge ${top}, lower edge ${bottom}`;
}

/** A height as the eye finds it: on a marked line, or so far above or below the nearest one. */
function edgePlace(drop: number, levels: readonly PlannedLevel[], step: LengthStep): string {
  const nearest = levels.reduce<PlannedLevel | null>(
    (best, level) =>
      best === null || Math.abs(level.drop.value - drop) < Math.abs(best.drop.value - drop) ? level : best,
    null,
  );
  if (nearest === null) return "";
  const below = drop - nearest.drop.value;
  const distance = formatLength(mm(Math.abs(below)), step);
  const line = `the ${levelWords[nearest.name]} line`;
  if (/^0 /.test(distance)) return `on ${line}`;
  return `${distance} ${below > 0 ? "below" : "above"} ${line}`;
}

function seamShiftText({ level, perSide, towards }: SeamShift, step: LengthStep): string {
  return `At the ${levelWords[level]}, mark the side seam ${formatLength(perSide, step)} further ${towards === "front" ? "forward" : "back"} on each side.`;
}

function shortfallAdvice(shortfall: Shortfall, step: LengthStep): string {
  const amount = atLeastOneStep(shortfall.amount, step);
  if (shortfall.what === "length") return lengthAdvice(shortfall.length, shortfall.sense, amount);
  const at = levelWords[shortfall.level];
  const part = partWords[shortfall.what];
  if (shortfall.sense === "staysShort") {
    return shortfall.what === "girth"
      ? `The ${at} stays ${amount} too small. Pin one more thin layer there and measure again.`
      : `${part} at the ${at} stays ${amount} short while the girth is right; more padding would make the girth too large. Accept it, and fit there on the body.`;
  }
  return shortfall.what === "girth"
    ? girthTooLarge(shortfall.level, amount)
    : `${part} at the ${at} reads ${amount} too much, because the form is already that long there. Accept it, or choose a smaller form.`;
}

const partWords = { girth: "The girth", frontArc: "The front arc", backArc: "The back arc" } as const;

const girthTooLarge = (level: LevelName, amount: string): string =>
  `The form is ${amount} larger than the body at the ${levelWords[level]}, and padding cannot take away. Choose a smaller form, turn the dial in if it has one there, or accept it.`;

type FixedLength = Extract<Shortfall, { readonly what: "length" }>["length"];

const fixedLengths: { readonly [length in FixedLength]: string } = {
  shoulderLength: "shoulder",
  neckGirth: "neck",
  acrossBack: "back between the shoulder ends",
  upperBackWidth: "upper back",
  shoulderDrop: "slope of the shoulder",
  apexHeight: "height of the bust",
};

function lengthAdvice(length: FixedLength, sense: Shortfall["sense"], amount: string): string {
  if (length === "apexHeight") {
    return `The form's bust lies ${amount} ${sense === "tooLarge" ? "lower" : "higher"} than the body's. Fill above or below it in the bra, and trust the bust marks, not the form's own curve.`;
  }
  return sense === "tooLarge"
    ? `The form's ${fixedLengths[length]} is ${amount} more than the body's, and padding cannot take away. Keep it in mind when fitting there, or choose a smaller form.`
    : `The form's ${fixedLengths[length]} is ${amount} less than the body's. A small pad can be pinned there by eye; measure again after it.`;
}

/** An amount too small for the step is still named, as less than one step. */
const atLeastOneStep = (amount: Millimetres, step: LengthStep): string => {
  const text = formatLength(amount, step);
  return /^0 /.test(text) ? `less than ${step}` : text;
};
