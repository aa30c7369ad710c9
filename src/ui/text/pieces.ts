import type { LengthStep } from "../../core/lengthText";
import type { PieceZone } from "../../core/padding/piece";
import type { PlannedLevel, PlannedPiece } from "../../core/plan/plan";
import { mm } from "../../core/units";
import { planWords } from "./plan";
import { shownLength, unbroken } from "./shownLength";

/**
 * Sentences about one piece: what it is called, how it is put on, where it lies, and what to cut. A piece carries the
 * number it has in the order of pinning, on the figure and everywhere else.
 */
export const pieceName = ({ zone, order }: PlannedPiece, step: LengthStep): string =>
  planWords(step).pieceName(zone, order);

export const pinSentence = (piece: PlannedPiece, step: LengthStep): string =>
  `${verbs[piece.zone]} ${lowerFirst(pieceName(piece, step))}.`;

/** The same for whoever holds the piece: with how many plies it is, where it is more than one. */
export const pinPliesSentence = (piece: PlannedPiece, step: LengthStep): string =>
  piece.plies === 1
    ? pinSentence(piece, step)
    : pinSentence(piece, step).replace(/\.$/, `, ${countWords[piece.plies] ?? String(piece.plies)} plies.`);

const verbs: { readonly [zone in PieceZone]: string } = {
  round: "Wrap",
  front: "Pin",
  back: "Pin",
  leftSide: "Pin",
  rightSide: "Pin",
  leftCup: "Lay",
  rightCup: "Lay",
};

/** Where a piece lies, as a sentence: `Centre front: top edge on the waist line, lower edge 1 in above the full hip line.` */
export function placeSentence(piece: PlannedPiece, levels: readonly PlannedLevel[], step: LengthStep): string {
  const place = planWords(step).piecePlace(piece, levels);
  return unbroken(`${upperFirst(place)}.`);
}

/** What to cut, in one line; with two battings it says from which. */
export function cutSentence({ cut, plies, feather }: PlannedPiece, step: LengthStep, batting: string | null): string {
  const times = plies === 1 ? "Cut one" : `Cut ${countWords[plies] ?? String(plies)} alike`;
  const thin = `pull the edge thin over ${shownLength(feather, step)}`;
  const from = batting === null ? "" : ` from ${batting}`;
  return `${times}${from}: ${cutSize(cut, step)}; ${thin}.`;
}

export function cutSize(cut: PlannedPiece["cut"], step: LengthStep): string {
  if (cut.shape === "disc") return `a disc ${shownLength(cut.diameter, step)} across`;
  if (cut.shape === "strip") return `${shownLength(cut.length, step)} long, ${shownLength(cut.width, step)} deep`;
  const widest = Math.max(0, ...cut.widths.map(({ left, right }) => left + right));
  return `${shownLength(mm(widest), step)} wide, ${shownLength(cut.height, step)} deep`;
}

const countWords: { readonly [count: number]: string } = { 2: "two", 3: "three", 4: "four", 5: "five", 6: "six" };

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
