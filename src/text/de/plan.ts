import { upperFirst } from "../upperFirst";
import type { LevelName } from "../../core/body/vocabulary";
import type { LengthStep } from "../../core/lengthText";
import type { Anchor } from "../../core/padding/layer";
import type { Piece, PieceKind, PieceName, PieceZone } from "../../core/padding/piece";
import type { PlannedLevel, SeamShift, Shortfall } from "../../core/plan/plan";
import { type Millimetres, mm } from "../../core/units";
import type { PlanWords } from "../../document/planFile";
import { formMatterText } from "./formMatters";
import { atLevel, inflected } from "./grammar/levels";
import { linesWords } from "./linesAtForm";
import { lineWords } from "./pictures";
import { writtenLength } from "./writtenLength";

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
  front: "vorn",
  back: "hinten",
  leftFront: "vorn links",
  rightFront: "vorn rechts",
  leftBack: "hinten links",
  rightBack: "hinten rechts",
  leftSide: "linke Seite",
  rightSide: "rechte Seite",
  leftCup: "links",
  rightCup: "rechts",
};

/** Behind the level, with which each makes one word: `Taillenpolster vorn`, `Hüft-Rundpolster`. */
const kindWords: { readonly [kind in PieceKind]: string } = {
  wrap: "-Rundpolster",
  panel: "polster",
  tuning: "-Ausgleichsstück",
  cup: "Körbchenpolster",
  bought: "-Fertigpolster",
  outerWrap: "Deckpolster",
};

const levelStems: { readonly [level in LevelName]: string } = {
  bust: "Brust",
  underbust: "Unterbrust",
  waist: "Taillen",
  highHip: "Hochhüft",
  fullHip: "Hüft",
};

export const pieceName = (piece: PieceName): string => upperFirst(pieceWords(piece));

export function pieceWords({ kind, zone, level, number }: PieceName): string {
  const isAtLevel = kind !== "cup" && kind !== "outerWrap";
  const words = [
    `${isAtLevel ? levelStems[level] : ""}${kindWords[kind]}`,
    zoneWords[zone],
    number > 1 ? String(number) : "",
  ];
  return words.filter((word) => word !== "").join(" ");
}

const anchorWords: { readonly [anchor in Anchor]: string } = {
  centerFront: "vordere Mitte",
  centerBack: "hintere Mitte",
  leftSide: "linke Seitennaht",
  rightSide: "rechte Seitennaht",
};

function piecePlace({ kind, anchor, zone, layers }: Piece, levels: readonly PlannedLevel[], step: LengthStep): string {
  if (kind === "cup") return `${zone === "leftCup" ? "linker" : "rechter"} Brustpunkt, innen im Körbchen`;
  const depths = layers.flatMap(({ rows }) => [
    rows[0]?.depthBelowNape ?? 0,
    rows[rows.length - 1]?.depthBelowNape ?? 0,
  ]);
  const top = edgePlace(Math.min(...depths), levels, step);
  const bottom = edgePlace(Math.max(...depths), levels, step);
  const line = layers.every(({ wrap }) => wrap)
    ? "die Kanten stoßen an der linken Seitennaht aneinander"
    : anchorWords[anchor];
  return `${line}, oben ${top}, unten ${bottom}`;
}

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
  const line = `der ${inflected(lineWords[nearest.name])}`;
  return /^0 /.test(distance) ? `an ${line}` : `${distance} ${below > 0 ? "unter" : "über"} ${line}`;
}

function seamShiftText({ level, perSide, towards }: SeamShift, step: LengthStep): string {
  return `${upperFirst(atLevel[level])} die Seitennaht auf jeder Seite ${writtenLength(perSide, step)} weiter ${towards === "front" ? "vorn" : "hinten"} anzeichnen.`;
}

function shortfallAdvice(shortfall: Shortfall, step: LengthStep, cause: "form" | "padding"): string {
  const amount = atLeastOneStep(shortfall.amount, step);
  if (shortfall.what === "length") return lengthAdvice(shortfall.length, shortfall.sense, amount);
  const at = atLevel[shortfall.level];
  const part = partWords[shortfall.what];
  if (shortfall.sense === "staysShort") {
    return shortfall.what === "girth"
      ? `${upperFirst(at)} fehlen rundum noch ${amount}. Stecken Sie dort noch eine dünne Lage auf und messen Sie wieder.`
      : `${upperFirst(at)} fehlen ${part} noch ${amount}, während das Maß rundum stimmt; mit mehr Polster würde es zu groß. Nehmen Sie es hin und passen Sie dort an der Person an.`;
  }
  if (cause === "padding") {
    return `${upperFirst(at)} ist das Polster ${part} ${amount} zu viel. Machen Sie dort die äußerste Lage schmaler oder nehmen Sie sie heraus, und messen Sie wieder.`;
  }
  return shortfall.what === "girth"
    ? girthTooLarge(shortfall.level, amount)
    : `${upperFirst(at)} zeigt das Maßband ${part} ${amount} zu viel, weil die Büste dort schon so viel hat. Nehmen Sie es hin, oder wählen Sie eine kleinere Büste.`;
}

const partWords = { girth: "rundum", frontArc: "vorn", backArc: "hinten" } as const;

export const girthTooLarge = (level: LevelName, amount: string): string =>
  `Die Büste ist ${atLevel[level]} ${amount} größer als die Person, und Polstern macht nur größer. Wählen Sie eine kleinere Büste, stellen Sie sie dort mit dem Drehknopf enger, wenn sie einen hat, oder nehmen Sie es hin.`;

type FixedLength = Extract<Shortfall, { readonly what: "length" }>["length"];

/** The form's part and then how it differs: `ist die Schulter der Büste 2 cm länger`. */
const fixedLengths: {
  readonly [length in FixedLength]: { readonly of: string; readonly more: string; readonly less: string };
} = {
  shoulderLength: { of: "Die Schulter der Büste", more: "länger", less: "kürzer" },
  neckGirth: { of: "Der Hals der Büste", more: "weiter", less: "enger" },
  acrossShoulders: { of: "Die Schulterbreite der Büste", more: "größer", less: "kleiner" },
  upperBackWidth: { of: "Der obere Rücken der Büste", more: "breiter", less: "schmaler" },
  shoulderDrop: { of: "Die Schulterschräge der Büste", more: "größer", less: "kleiner" },
  apexHeight: { of: "Die Brust der Büste", more: "tiefer", less: "höher" },
};

function lengthAdvice(length: FixedLength, sense: Shortfall["sense"], amount: string): string {
  const isMore = sense === "tooLarge";
  const { of, more, less } = fixedLengths[length];
  if (length === "apexHeight") {
    return `${of} liegt ${amount} ${isMore ? more : less} als die der Person. Füllen Sie im BH darüber oder darunter auf, und richten Sie sich nach der Brustlinie, nicht nach der Wölbung der Büste.`;
  }
  const differs = `${of} ist ${amount} ${isMore ? more : less} als bei der Person`;
  const helps = helpsLength[length];
  if (helps?.where === sense) return `${differs}. ${helps.act}`;
  return isMore || length === "shoulderDrop"
    ? `${differs}, und Polstern macht nur größer. Denken Sie beim Anpassen dort daran, oder wählen Sie eine andere Büste.`
    : `${differs}. Dort lässt sich nach Augenmaß ein kleines Polster aufstecken; messen Sie danach wieder.`;
}

const helpsLength: {
  readonly [length in FixedLength]?: { readonly where: Shortfall["sense"]; readonly act: string };
} = {
  shoulderLength: { where: "tooLarge", act: "Zeichnen Sie die Armlochlinie weiter innen an, über dem Polster." },
  shoulderDrop: {
    where: "tooLarge",
    act: "Ein Schulterkeil hebt die Spitze: Messen Sie beide Seiten, an der Person und an der Büste.",
  },
  neckGirth: { where: "staysShort", act: "Halswickel bauen ihn auf." },
  upperBackWidth: {
    where: "staysShort",
    act: "Ein Polster zwischen den Schulterblättern baut ihn auf, sobald Rückenlänge und Höhe der Taillenlinie gemessen sind, an der Person und an der Büste.",
  },
};

const atLeastOneStep = (amount: Millimetres, step: LengthStep): string => {
  const text = writtenLength(amount, step);
  return /^0 /.test(text) ? `weniger als ${step.replace(".", ",")}` : text;
};
