import { upperFirst } from "./upperFirst";
import type { LengthStep } from "../core/lengthText";
import type { LayerCut } from "../core/padding/layerCut";
import type { PieceName } from "../core/padding/piece";
import type { PlannedLevel, PlannedPiece } from "../core/plan/plan";
import { mm } from "../core/units";
import { pieceName, pieceWords, planWords } from "./plan";
import { shownLength, unbroken } from "./shownLength";

/**
 * Sentences about one piece: what it is called, how it is put on, where it lies, and what to cut. In pictures a piece
 * carries the number it has in the order of pinning.
 */
/** Beside a picture: `5. Front waist panel 2`. */
export const numberedName = (piece: PieceName & Pick<PlannedPiece, "order">): string =>
  `${piece.order}. ${pieceName(piece)}`;

/** Inside a sentence: `the front waist panel`, `the second front waist panel`; "Pin back" is heard as one word, so an article stands between. */
export function thePiece(piece: PieceName): string {
  const name = pieceWords({ ...piece, number: 1 });
  if (piece.number === 1) return `the ${name}`;
  const ordinal = ordinals[piece.number];
  return ordinal === undefined ? `the ${name} number ${piece.number}` : `the ${ordinal} ${name}`;
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

/** How it is put on, as an action that cannot be misheard. */
export const pinSentence = (piece: PieceName): string => `${pinWords(piece)}.`;

function pinWords(piece: PieceName): string {
  const name = thePiece(piece);
  switch (piece.kind) {
    case "wrap":
    case "outerWrap":
      return `Pin ${name}, all the way around`;
    case "cup":
      return `Lay ${name} in the cup`;
    case "tuning":
      return `Slip in ${name}, under the outermost layer there`;
    case "panel":
    case "bought":
      return `Pin ${name}`;
  }
}

export const layerCount = (layers: number): string =>
  layers === 1 ? "one layer" : `${countWords[layers] ?? String(layers)} layers`;

/** Where a piece lies, as a sentence: `Center front, from 2 in above the bust line to 1 in below the waistline.` */
export function placeSentence(piece: PlannedPiece, levels: readonly PlannedLevel[], step: LengthStep): string {
  return unbroken(`${upperFirst(planWords(step).piecePlace(piece, levels))}.`);
}

/** What to cut of a whole piece, in one line; with two battings it says from which. Every layer's own size is on its drawing. */
export function cutSentence({ cut, layers }: PlannedPiece, step: LengthStep, batting: string | null): string {
  const from = batting === null ? "" : ` from ${batting}`;
  const largest = cut[cut.length - 1];
  if (largest === undefined) return "";
  const size = cutSize(largest, step);
  const feather = featherWords(layers[layers.length - 1]?.feather ?? 0, step);
  return layers.length === 1
    ? `Cut one layer${from}: ${size}. ${upperFirst(feather)}.`
    : `Cut ${layerCount(layers.length)}${from}, each in its own size, the outermost ${size}. ${upperFirst(feather)}.`;
}

export const featherWords = (feather: number, step: LengthStep): string =>
  feather === 0 ? "leave the edges square" : `feather the last ${shownLength(mm(feather), step)}`;

export function cutSize(cut: LayerCut, step: LengthStep): string {
  switch (cut.shape) {
    case "bought":
      return "ready-made";
    case "disc":
      return `a disc ${shownLength(cut.diameter, step)} across`;
    case "strip":
      return `${shownLength(mm(Math.max(cut.topWidth, cut.bottomWidth)), step)} long, ${shownLength(cut.height, step)} high`;
    case "panel":
      return `${shownLength(widest(cut), step)} wide, ${shownLength(cut.height, step)} high`;
  }
}

const widest = ({ widths, topWidth, bottomWidth }: Extract<LayerCut, { readonly shape: "panel" | "strip" }>) =>
  mm(Math.max(topWidth, bottomWidth, ...widths.map(({ left, right }) => left + right)));

const countWords: { readonly [count: number]: string } = { 2: "two", 3: "three", 4: "four", 5: "five", 6: "six" };
