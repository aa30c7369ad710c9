import type { LevelName } from "../../core/body/vocabulary";
import { formatLength, type LengthStep } from "../../core/lengthText";
import type { Piece, PieceZone } from "../../core/padding/piece";
import type { PlannedLevel, PlannedPiece, SeamShift, Shortfall } from "../../core/plan/plan";
import { type Millimetres, mm } from "../../core/units";
import type { PlanWords } from "../../document/planFile";
import { formMatterText } from "./formMatters";
import { linesWords } from "./linesAtForm";
import { levelWords, lineWords } from "./pictures";

/** The English of a plan: what a piece is called, where it goes, what to do about what stays short, in one unit. */
export const planWords = (step: LengthStep): PlanWords => ({
  pieceName,
  piecePlace: (piece, levels) => piecePlace(piece, levels, step),
  draft: (mayMiss) => `${linesWords.draft.note(formatLength(mayMiss, step))} ${linesWords.draft.makesFirm}`,
  formMatter: (matter) => formMatterText(matter, step),
  shortfallAdvice: (shortfall) => shortfallAdvice(shortfall, step),
  seamShift: (shift) => seamShiftText(shift, step),
});

const zoneWords: { readonly [zone in PieceZone]: { readonly name: string; readonly center: string } } = {
  round: { name: "Wrap", center: "all the way around, edges meet at a side seam" },
  front: { name: "Front panel", center: "center front" },
  back: { name: "Back panel", center: "center back" },
  leftSide: { name: "Left side panel", center: "left side seam" },
  rightSide: { name: "Right side panel", center: "right side seam" },
  leftCup: { name: "Left cup pad", center: "left apex, inside the cup" },
  rightCup: { name: "Right cup pad", center: "right apex, inside the cup" },
};

/** By place, with a number from the second of a name on. The number is that of the piece's id, so that it stays. */
export function pieceName({ zone, id }: Pick<Piece, "zone" | "id">): string {
  const number = Number(/-(\d+)$/.exec(id)?.[1] ?? 1);
  return number > 1 ? `${zoneWords[zone].name} ${number}` : zoneWords[zone].name;
}

function piecePlace({ zone, rows }: PlannedPiece, levels: readonly PlannedLevel[], step: LengthStep): string {
  const { center } = zoneWords[zone];
  if (zone === "leftCup" || zone === "rightCup") return center;
  const drops = rows.map(({ drop }) => drop);
  const [top, bottom] = [edgePlace(Math.min(...drops), levels, step), edgePlace(Math.max(...drops), levels, step)];
  return `${center}, top edge ${top}, lower edge ${bottom}`;
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
  const line = `the ${lineWords[nearest.name]}`;
  if (/^0 /.test(distance)) return `on ${line}`;
  return `${distance} ${below > 0 ? "below" : "above"} ${line}`;
}

function seamShiftText({ level, perSide, towards }: SeamShift, step: LengthStep): string {
  return `At the ${levelWords[level]}, mark the side seam ${formatLength(perSide, step)} farther ${towards === "front" ? "forward" : "back"} on each side.`;
}

function shortfallAdvice(shortfall: Shortfall, step: LengthStep): string {
  const amount = atLeastOneStep(shortfall.amount, step);
  if (shortfall.what === "length") return lengthAdvice(shortfall.length, shortfall.sense, amount);
  const at = levelWords[shortfall.level];
  const part = partWords[shortfall.what];
  if (shortfall.sense === "staysShort") {
    return shortfall.what === "girth"
      ? `The padding at the ${at} stays ${amount} short. Pin one more thin layer there and measure again.`
      : `The padding ${part} at the ${at} stays ${amount} short while the measurement all around is on target; more padding would put that over. Accept it, and fit there on the person.`;
  }
  return shortfall.what === "girth"
    ? girthTooLarge(shortfall.level, amount)
    : `The tape ${part} at the ${at} reads ${amount} over, because the form has that much there already. Accept it, or choose a smaller form.`;
}

const partWords = { girth: "all around", frontArc: "in front", backArc: "in back" } as const;

const girthTooLarge = (level: LevelName, amount: string): string =>
  `The form is ${amount} larger than the person at the ${levelWords[level]}, and padding only adds. Choose a smaller form, turn the dial in if it has one there, or accept it.`;

type FixedLength = Extract<Shortfall, { readonly what: "length" }>["length"];

const fixedLengths: { readonly [length in FixedLength]: string } = {
  shoulderLength: "shoulder",
  neckGirth: "neck",
  acrossShoulders: "back from shoulder tip to shoulder tip",
  upperBackWidth: "upper back",
  shoulderDrop: "slope of the shoulder",
  apexHeight: "height of the bust",
};

function lengthAdvice(length: FixedLength, sense: Shortfall["sense"], amount: string): string {
  if (length === "apexHeight") {
    return `The form’s bust lies ${amount} ${sense === "tooLarge" ? "lower" : "higher"} than the person’s. Fill above or below it in the bra, and go by the bust line, not by the form’s own curve.`;
  }
  return sense === "tooLarge"
    ? `The form’s ${fixedLengths[length]} is ${amount} more than the person’s, and padding only adds. Keep it in mind when fitting there, or choose a smaller form.`
    : `The form’s ${fixedLengths[length]} is ${amount} less than the person’s. A small pad can be pinned there by eye; measure again after it.`;
}

/** An amount too small for the step is still named, as less than one step. */
const atLeastOneStep = (amount: Millimetres, step: LengthStep): string => {
  const text = formatLength(amount, step);
  return /^0 /.test(text) ? `less than ${step}` : text;
};
