import type { LengthStep } from "../../core/lengthText";
import type { PieceZone } from "../../core/padding/piece";
import type { PlannedLevel, PlannedPiece } from "../../core/plan/plan";
import { mm } from "../../core/units";
import { pieceName, planWords } from "./plan";
import { shownLength, unbroken } from "./shownLength";

/**
 * Sentences about one piece: what it is called, how it is put on, where it lies, and what to cut. In pictures a piece
 * carries the number it has in the order of pinning.
 */
/** Beside a picture: `5. Front panel 2`. */
export const numberedName = (piece: PlannedPiece): string => `${piece.order}. ${pieceName(piece)}`;

/** Inside a sentence: `the front panel`, `the second front panel`; "Pin back" is heard as one word, so an article stands between. */
export function thePiece(piece: PlannedPiece): string {
  const name = lowerFirst(pieceName(piece));
  const [, kind = name, number] = /^(.*) (\d+)$/.exec(name) ?? [];
  if (number === undefined) return `the ${name}`;
  const ordinal = ordinals[Number(number)];
  return ordinal === undefined ? `the ${kind} number ${number}` : `the ${ordinal} ${kind}`;
}

const ordinals: readonly (string | undefined)[] = [
  undefined,
  "first",
  "second",
  "third",
  "fourth",
  "fifth",
  "sixth",
  "seventh",
  "eighth",
  "ninth",
  "tenth",
];

export const pinSentence = (piece: PlannedPiece): string => `${pinWords(piece)}.`;

/** The same for whoever holds the piece: with how many layers it has, where it is more than one. */
export const pinLayersSentence = (piece: PlannedPiece): string =>
  piece.plies === 1 ? pinSentence(piece) : `${pinWords(piece)}, ${layerCount(piece.plies)}.`;

const pinWords = (piece: PlannedPiece): string => `${verbs[piece.zone]} ${thePiece(piece)}${ways[piece.zone]}`;

const verbs: { readonly [zone in PieceZone]: string } = {
  round: "Pin",
  front: "Pin",
  back: "Pin",
  leftSide: "Pin",
  rightSide: "Pin",
  leftCup: "Lay",
  rightCup: "Lay",
};

const ways: { readonly [zone in PieceZone]: string } = {
  round: ", all the way around",
  front: "",
  back: "",
  leftSide: "",
  rightSide: "",
  leftCup: " in the cup",
  rightCup: " in the cup",
};

/** Where a piece lies, as a sentence: `Center front, top edge on the waistline, lower edge 1 in above the full hip line.` */
export function placeSentence(piece: PlannedPiece, levels: readonly PlannedLevel[], step: LengthStep): string {
  const place = planWords(step).piecePlace(piece, levels);
  return unbroken(`${upperFirst(place)}.`);
}

/** What to cut, in one line; with two battings it says from which. */
export function cutSentence({ cut, plies, feather }: PlannedPiece, step: LengthStep, batting: string | null): string {
  const from = batting === null ? "" : ` from ${batting}`;
  return `Cut ${layerCount(plies)}${from}${plies === 1 ? ":" : ", each"} ${cutSize(cut, step)}. Feather the last ${shownLength(feather, step)}.`;
}

export const layerCount = (count: number): string =>
  count === 1 ? "one layer" : `${countWords[count] ?? String(count)} layers`;

export function cutSize(cut: PlannedPiece["cut"], step: LengthStep): string {
  if (cut.shape === "disc") return `a disc ${shownLength(cut.diameter, step)} across`;
  if (cut.shape === "strip") return `${shownLength(cut.length, step)} long, ${shownLength(cut.width, step)} high`;
  const widest = Math.max(0, ...cut.widths.map(({ left, right }) => left + right));
  return `${shownLength(mm(widest), step)} wide, ${shownLength(cut.height, step)} high`;
}

const countWords: { readonly [count: number]: string } = { 2: "two", 3: "three", 4: "four", 5: "five", 6: "six" };

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
