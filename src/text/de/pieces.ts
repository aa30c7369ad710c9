import { upperFirst } from "../upperFirst";
import type { LengthStep } from "../../core/lengthText";
import type { LayerCut } from "../../core/padding/layerCut";
import type { PieceName } from "../../core/padding/piece";
import type { PlannedLevel, PlannedPiece } from "../../core/plan/plan";
import { mm } from "../../core/units";
import { shownLength, unbroken } from "../shownLength";
import { countWord } from "./grammar/listed";
import { pieceName, pieceWords, planWords } from "./plan";

export const numberedName = (piece: PieceName & Pick<PlannedPiece, "order">): string =>
  `${piece.order}. ${pieceName(piece)}`;

/** Every piece is neuter, so that `das` serves as subject and as object; sentences are built to need no other case. */
export function thePiece(piece: PieceName): string {
  const name = pieceWords({ ...piece, number: 1 });
  if (piece.number === 1) return `das ${name}`;
  const ordinal = ordinals[piece.number];
  return ordinal === undefined ? `das ${name} Nummer ${piece.number}` : `das ${ordinal} ${name}`;
}

const ordinals: readonly (string | undefined)[] = [
  undefined,
  "erste",
  "zweite",
  "dritte",
  "vierte",
  "fünfte",
  "sechste",
  "siebte",
  "achte",
  "neunte",
  "zehnte",
];

export const pinSentence = (piece: PieceName): string => `${upperFirst(pinWords(piece))}.`;

function pinWords(piece: PieceName): string {
  const name = thePiece(piece);
  switch (piece.kind) {
    case "wrap":
    case "outerWrap":
      return `${name} ganz herum aufstecken`;
    case "cup":
      return `${name} ins Körbchen legen`;
    case "tuning":
      return `${name} unter die äußerste Lage dort schieben`;
    case "panel":
    case "bought":
      return `${name} aufstecken`;
  }
}

export const layerCount = (layers: number): string => (layers === 1 ? "eine Lage" : `${countWord(layers)} Lagen`);

export function placeSentence(piece: PlannedPiece, levels: readonly PlannedLevel[], step: LengthStep): string {
  return unbroken(`${upperFirst(planWords(step).piecePlace(piece, levels))}.`);
}

export function cutSentence({ cut, layers }: PlannedPiece, step: LengthStep, batting: string | null): string {
  const from = batting === null ? "" : ` (${batting})`;
  const largest = cut[cut.length - 1];
  if (largest === undefined) return "";
  const size = cutSize(largest, step);
  const feather = upperFirst(featherWords(layers[layers.length - 1]?.feather ?? 0, step));
  return layers.length === 1
    ? `Eine Lage zuschneiden${from}: ${size}. ${feather}.`
    : `${upperFirst(layerCount(layers.length))} zuschneiden${from}, jede in ihrer eigenen Größe, die äußerste ${size}. ${feather}.`;
}

export const featherWords = (feather: number, step: LengthStep): string =>
  feather === 0 ? "die Kanten gerade lassen" : `die letzten ${shownLength(mm(feather), step)} dünn auszupfen`;

export function cutSize(cut: LayerCut, step: LengthStep): string {
  switch (cut.shape) {
    case "bought":
      return "fertig gekauft";
    case "disc":
      return `eine runde Scheibe mit ${shownLength(cut.diameter, step)} Durchmesser`;
    case "strip":
      return `${shownLength(mm(Math.max(cut.topWidth, cut.bottomWidth)), step)} lang, ${shownLength(cut.height, step)} hoch`;
    case "panel":
      return `${shownLength(widest(cut), step)} breit, ${shownLength(cut.height, step)} hoch`;
  }
}

const widest = ({ widths, topWidth, bottomWidth }: Extract<LayerCut, { readonly shape: "panel" | "strip" }>) =>
  mm(Math.max(topWidth, bottomWidth, ...widths.map(({ left, right }) => left + right)));
