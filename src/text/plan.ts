import { upperFirst } from "./upperFirst";
import type { LevelName } from "../core/body/vocabulary";
import type { LengthStep } from "../core/lengthText";
import type { Anchor } from "../core/padding/layer";
import type { Piece, PieceKind, PieceName, PieceZone } from "../core/padding/piece";
import type { PlannedLevel, SeamShift, Shortfall } from "../core/plan/plan";
import { type Millimetres, mm } from "../core/units";
import type { PlanWords } from "../document/planFile";
import { formMatterText } from "./formMatters";
import { linesWords } from "./linesAtForm";
import { levelWords, lineWords } from "./pictures";
import { writtenLength } from "./writtenLength";

/** The English of a plan: what a piece is called, where it goes, what to do about what stays short, in one unit. */
export const planWords = (step: LengthStep): PlanWords => ({
  pieceName: pieceWords,
  piecePlace: (piece, levels) => piecePlace(piece, levels, step),
  draft: (mayMiss) => `${linesWords.draft.note(writtenLength(mayMiss, step))} ${linesWords.draft.makesFirm}`,
  formMatter: (matter) => formMatterText(matter, step),
  shortfallAdvice: (shortfall, cause) => shortfallAdvice(shortfall, step, cause),
  seamShift: (shift) => seamShiftText(shift, step),
});

const zoneWords: { readonly [zone in PieceZone]: string } = {
  around: "",
  front: "front",
  back: "back",
  leftFront: "left front",
  rightFront: "right front",
  leftBack: "left back",
  rightBack: "right back",
  leftSide: "left side",
  rightSide: "right side",
  leftCup: "left",
  rightCup: "right",
};

const kindWords: { readonly [kind in PieceKind]: string } = {
  wrap: "wrap",
  panel: "panel",
  tuning: "tuning layer",
  cup: "cup pad",
  bought: "bought pad",
  outerWrap: "outer wrap",
};

/** What a piece is called at the head of something. */
export function pieceName(piece: PieceName): string {
  const words = pieceWords(piece);
  return upperFirst(words);
}

/** What a piece is called within a sentence: its place, what it is, and a number from the second such piece on. */
export function pieceWords({ kind, zone, level, number }: PieceName): string {
  const isAtLevel = kind !== "cup" && kind !== "outerWrap";
  const words = [
    zoneWords[zone],
    isAtLevel ? levelWords[level] : "",
    kindWords[kind],
    number > 1 ? String(number) : "",
  ];
  return words.filter((word) => word !== "").join(" ");
}

const anchorWords: { readonly [anchor in Anchor]: string } = {
  centerFront: "center front",
  centerBack: "center back",
  leftSide: "left side seam",
  rightSide: "right side seam",
};

function piecePlace({ kind, anchor, zone, layers }: Piece, levels: readonly PlannedLevel[], step: LengthStep): string {
  if (kind === "cup") return zone === "leftCup" ? "left apex, inside the cup" : "right apex, inside the cup";
  const depths = layers.flatMap(({ rows }) => [
    rows[0]?.depthBelowNape ?? 0,
    rows[rows.length - 1]?.depthBelowNape ?? 0,
  ]);
  const edges = `from ${edgePlace(Math.min(...depths), levels, step)} to ${edgePlace(Math.max(...depths), levels, step)}`;
  const line = layers.every(({ wrap }) => wrap) ? "edges meet at the left side seam" : anchorWords[anchor];
  return `${line}, ${edges}`;
}

/** A height as the eye finds it: on a marked line, or so far above or below the nearest one. */
function edgePlace(depth: number, levels: readonly PlannedLevel[], step: LengthStep): string {
  const nearest = levels.reduce<PlannedLevel | null>(
    (best, level) =>
      best === null || Math.abs(level.depthBelowNape.value - depth) < Math.abs(best.depthBelowNape.value - depth)
        ? level
        : best,
    null,
  );
  if (nearest === null) return "";
  const below = depth - nearest.depthBelowNape.value;
  const distance = writtenLength(mm(Math.abs(below)), step);
  const line = `the ${lineWords[nearest.name]}`;
  if (/^0 /.test(distance)) return line;
  return `${distance} ${below > 0 ? "below" : "above"} ${line}`;
}

function seamShiftText({ level, perSide, towards }: SeamShift, step: LengthStep): string {
  return `At the ${levelWords[level]}, mark the side seam ${writtenLength(perSide, step)} farther ${towards === "front" ? "forward" : "back"} on each side.`;
}

function shortfallAdvice(shortfall: Shortfall, step: LengthStep, cause: "form" | "padding"): string {
  const amount = atLeastOneStep(shortfall.amount, step);
  if (shortfall.what === "length") return lengthAdvice(shortfall.length, shortfall.sense, amount);
  const at = levelWords[shortfall.level];
  const part = partWords[shortfall.what];
  if (shortfall.sense === "staysShort") {
    return shortfall.what === "girth"
      ? `The padding at the ${at} stays ${amount} short. Pin one more thin layer there and measure again.`
      : `The padding ${part} at the ${at} stays ${amount} short while the measurement all around is on target; more padding would put that over. Accept it, and fit there on the person.`;
  }
  if (cause === "padding") {
    return `The padding ${part} at the ${at} is ${amount} over. Narrow or take out the outermost layer there, and measure again.`;
  }
  return shortfall.what === "girth"
    ? girthTooLarge(shortfall.level, amount)
    : `The tape ${part} at the ${at} reads ${amount} over, because the form has that much there already. Accept it, or choose a smaller form.`;
}

const partWords = { girth: "all around", frontArc: "in front", backArc: "in back" } as const;

export const girthTooLarge = (level: LevelName, amount: string): string =>
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
  const isMore = sense === "tooLarge";
  const differs = `The form’s ${fixedLengths[length]} is ${amount} ${isMore ? "more" : "less"} than the person’s`;
  const helps = helpsLength[length];
  if (helps?.where === sense) return `${differs}. ${helps.act}`;
  // A shoulder that slopes less stands higher: there, less of it is what padding cannot take away.
  return isMore || length === "shoulderDrop"
    ? `${differs}, and padding only adds. Keep it in mind when fitting there, or choose another form.`
    : `${differs}. A small pad can be pinned there by eye; measure again after it.`;
}

/** What is built or marked above the bust where a length differs this way. */
const helpsLength: {
  readonly [length in FixedLength]?: { readonly where: Shortfall["sense"]; readonly act: string };
} = {
  shoulderLength: { where: "tooLarge", act: "Mark the armhole line farther in, over the padding." },
  shoulderDrop: { where: "tooLarge", act: "A shoulder wedge lifts the tip: measure both sides, of person and form." },
  neckGirth: { where: "staysShort", act: "Neck wraps build it out." },
  upperBackWidth: {
    where: "staysShort",
    act: "A panel between the shoulder blades builds it, once the back waist length and the height of the waistline are measured, of person and form.",
  },
};

/** An amount too small for the step is still named, as less than one step. */
const atLeastOneStep = (amount: Millimetres, step: LengthStep): string => {
  const text = writtenLength(amount, step);
  return /^0 /.test(text) ? `less than ${step}` : text;
};
