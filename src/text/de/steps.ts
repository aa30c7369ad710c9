import { upperFirst } from "../upperFirst";
import { handLengths, largerLine } from "../../app/steps/handLengths";
import { trialHeight } from "../../core/plan/trialPiece";
import type { Step, TuneAct } from "../../app/steps/step";
import type { BuildAbove } from "../../core/above/buildAbove";
import { levelNames } from "../../core/body/vocabulary";
import type { PlannedPiece } from "../../core/plan/plan";
import { mm } from "../../core/units";
import { shownLength } from "../shownLength";
import type { StepSaying, StepWords } from "../steps";
import { aboveWords, turnWords } from "./above";
import { makingWords } from "./makingSteps";
import { readyWords, unsaidForm } from "./formKinds";
import { atLevel, inflected, theLevel } from "./grammar/levels";
import { listed } from "./grammar/listed";
import { levelList } from "./learning";
import { levelWords, lineWords } from "./pictures";
import { cutSentence, layerCount, pinSentence, thePiece } from "./pieces";
import { girthTooLarge, planWords } from "./plan";

export type { StepSaying, StepWords } from "../steps";

export const stepSentence = (step: Step, saying: StepSaying): string => stepWords(step, saying).join(" ").trim();

export function stepWords(step: Step, saying: StepSaying): StepWords {
  const { piece } = step;
  switch (step.do) {
    case "prepare-form":
      return prepareWords(saying);
    case "mark-lines":
      return [
        "Die Linien der Person auf der Büste anzeichnen.",
        `Senkrecht unter ihrem Nacken: ${linesBelow(saying)}.`,
      ];
    case "read-lines":
      return [
        "Die nackte Büste auf jeder Linie messen.",
        "Rundum, vorn von Seitennaht zu Seitennaht und die Breite gerade hindurch.",
      ];
    case "trial":
      return [
        "Das Vlies ausprobieren.",
        `Die Taille messen, einen ${shownLength(trialHeight, saying.lengths)} hohen Streifen dreimal herumlegen, glatt und ungedehnt, und wieder messen. Dann den Streifen abnehmen.`,
      ];
    case "cut":
      return piece === null ? nothing : cutWords(piece, saying);
    case "stack":
      return piece === null ? nothing : stackWords(piece);
    case "pin":
      return piece === null ? nothing : [pinSentence(piece), atPlace(piece, saying)];
    case "carry-lines":
      return carryWords(step, saying);
    case "read":
    case "read-all":
      return readWords(step);
    case "plan-anew":
      return ["Die übrigen Polster neu berechnen.", "Das Maßband sagt mehr, als der Plan wusste."];
    case "tune":
      return step.act === null ? nothing : tuneWords(step.act, saying);
    case "baste":
      return basteWords(named(step.pieceIds, saying), saying);
    case "build-above":
    case "mark-armhole":
      return step.build === null ? nothing : buildWords(step.build, saying);
    case "correct-above":
      return step.build === null || step.turn === null ? nothing : turnWords(step.build, step.turn, saying.lengths);
    case "look":
      return [
        "Die Büste von vorn und von der Seite ansehen, neben der Person.",
        "Über dem Polster messen: Höhe und Abstand der Brustpunkte, Rückenlänge und vordere Taillenlänge.",
      ];
    case "check":
      return checkWords(step);
    case "done":
      return [
        saying.pieces.length === 0 ? "Es gibt nichts zu polstern." : "Das Ebenbild ist fertig.",
        largerPlace(saying),
      ];
    default:
      return makingWords({ ...step, do: step.do }, saying);
  }
}

function checkWords(step: Step): StepWords {
  if (step.isTwice)
    return ["Zwei verschiedene Maße von einer Stelle.", "Angeben, welches stimmt, oder noch einmal messen."];
  return [
    `${upperFirst(levelList(step.levels, levelNames.length))} noch einmal messen.`,
    "Was eingetippt ist, ist mit diesen Polstern nicht möglich. Es bleibt stehen und wird nicht benutzt.",
  ];
}

function carryWords(step: Step, saying: StepSaying): StepWords {
  return [
    `Die Linien nach außen übertragen, über ${listed(named(step.pieceIds, saying))}.`,
    "Das Markierband wieder auf jede Linie legen. Jede Linie, die vordere und hintere Mitte und die Seiten mit langen Stichen in Kontrastfarbe nähen, nur durch die äußerste Lage: Darunter werden später Ausgleichsstücke geschoben.",
  ];
}

const cutWords = (piece: PlannedPiece, { lengths, cutFrom }: StepSaying): StepWords => [
  `${upperFirst(thePiece(piece))} zuschneiden.`,
  cutSentence(piece, lengths, cutFrom?.(piece) ?? null),
];

const nothing: StepWords = ["", ""];

function prepareWords(saying: StepSaying): StepWords {
  const ready = readyWords(saying.facts?.form ?? unsaidForm, saying.lengths);
  const how = [
    "Den Ständer feststellen und beschweren, und den BH anziehen, wenn einer getragen wird. Er bleibt an.",
    ...ready,
  ].join(" ");
  const larger = largerPlace(saying);
  return larger === ""
    ? ["Die Büste vorbereiten.", how]
    : [
        "Zuerst die Größe der Büste ansehen.",
        `${larger} Soll sie trotzdem benutzt werden, bereiten Sie sie vor. ${how}`,
      ];
}

function largerPlace({ levels, lengths }: StepSaying): string {
  const worst = largerLine(levels);
  return worst === null ? "" : girthTooLarge(worst.name, shownLength(worst.over, lengths));
}

const linesBelow = ({ levels, lengths }: StepSaying): string =>
  levels
    .map(({ name, depthBelowNape }) => `${levelWords[name]} ${shownLength(depthBelowNape.value, lengths)}`)
    .join(", ");

const stackWords = (piece: PlannedPiece): StepWords => [
  `Für ${thePiece(piece)} ${layerCount(piece.layers.length)} aufeinanderlegen.`,
  "Flach liegend zusammenheften, alle bis auf die äußerste: Die bleibt gesteckt, bis der Ausgleich fertig ist.",
];

const atPlace = (piece: PlannedPiece, { lengths, levels }: StepSaying): string =>
  `${upperFirst(planWords(lengths).piecePlace(piece, levels))}.`;

function readWords({ names, levels, do: name }: Pick<Step, "names" | "levels" | "do">): StepWords {
  const [only] = names;
  if (only !== undefined && names.length === 1) {
    const level = upperFirst(theLevel[levels[0] ?? "waist"]);
    if (/Girth$/.test(only)) return [`${level} rundum messen.`, "Waagerecht und anliegend, über dem Polster."];
    const half = only.endsWith("FrontArc") ? "vorn" : "hinten";
    return [`${level} ${half} messen.`, "Von Seitennaht zu Seitennaht."];
  }
  if (name === "read-all") return ["Alle Maße nehmen.", "Jede Linie rundum, vorn und hinten."];
  return [
    `${upperFirst(levelList(levels, levelNames.length))} messen.`,
    "Rundum, und vorn von Seitennaht zu Seitennaht.",
  ];
}

const senses = { over: "zu viel", short: "zu wenig" } as const;
const halves = { front: "vorn", back: "hinten" } as const;

function tuneWords(act: TuneAct, { lengths, cutFrom }: StepSaying): StepWords {
  const { level, half, amount, sense } = act.off;
  const off = `${shownLength(mm(amount), lengths)} Polster ${senses[sense]} ${atLevel[level]}, ${halves[half]}.`;
  switch (act.kind) {
    case "narrow": {
      const each = act.at.map(
        ({ level, eachSide }) =>
          `an der ${inflected(lineWords[level])} auf jeder Seite um ${shownLength(mm(eachSide), lengths)}`,
      );
      return [off, `${upperFirst(thePiece(act.piece))} schmaler machen: ${each.join(", ")}.`];
    }
    case "takeOut":
      return [
        off,
        `${upperFirst(thePiece(act.piece))} herausnehmen. Zuerst die Heftstiche von dem auftrennen, was dort darüber liegt, dann herausziehen.`,
      ];
    case "addLayer":
      return [off, `${pinSentence(act.piece)} ${cutSentence(act.piece, lengths, cutFrom?.(act.piece) ?? null)}`];
  }
}

function buildWords(build: BuildAbove, { lengths, facts }: StepSaying): StepWords {
  const { act, how, reads, stays } = aboveWords(build, lengths, facts?.cloth !== "none");
  return [act, [...how, ...basted(build), ...reads, ...stays].join(" ")];
}

const basted = ({ act }: BuildAbove): readonly string[] =>
  act.what === "layers" ? ["Dann heften; die Nadeln herausziehen und zählen."] : [];

export function buildHow(build: BuildAbove, { lengths, facts }: StepSaying): string {
  const { how, stays } = aboveWords(build, lengths, facts?.cloth !== "none");
  return [...how, ...basted(build), ...stays].join(" ");
}

function basteWords(names: readonly string[], { lengths }: StepSaying): StepWords {
  const inset = shownLength(handLengths.basteInset, lengths);
  const how =
    "Die Nadeln herausziehen und zählen: so viele, wie hineingekommen sind. Hier können Sie für heute aufhören.";
  return names.length < 3
    ? [`${upperFirst(listed(names))} heften.`, `Mit langen Stichen, ${inset} innerhalb der Kanten. ${how}`]
    : [
        "Heften, was gesteckt ist.",
        `Alle ${names.length} Polster, mit langen Stichen, ${inset} innerhalb der Kanten. ${how}`,
      ];
}

const named = (ids: readonly string[], { pieces }: StepSaying): readonly string[] =>
  ids.map((id) => {
    const piece = pieces.find((one) => one.id === id);
    return piece === undefined ? id : thePiece(piece);
  });
