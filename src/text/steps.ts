import { upperFirst } from "./upperFirst";
import type { BuildAbove } from "../core/above/buildAbove";
import { levelNames } from "../core/body/vocabulary";
import { handLengths, largerLine } from "../app/steps/handLengths";
import type { StepFacts } from "../app/steps/stepFacts";
import { trialHeight } from "../core/plan/trialPiece";
import type { Step, TuneAct } from "../app/steps/step";
import type { LengthStep } from "../core/lengthText";
import type { PieceName } from "../core/padding/piece";
import type { PlannedPiece } from "../core/plan/plan";
import { mm } from "../core/units";
import { aboveWords, turnWords } from "./above";
import { levelList } from "./learning";
import { readyWords, unsaidForm } from "./formKinds";
import { makingWords } from "./makingSteps";
import { levelWords, lineWords } from "./pictures";
import { cutSentence, layerCount, pinSentence, thePiece } from "./pieces";
import { girthTooLarge, planWords } from "./plan";
import { shownLength } from "./shownLength";

/** What is needed to say a step: how lengths are written, where the lines are, and how pieces are called by their ids. */
export interface StepSaying {
  readonly lengths: LengthStep;
  readonly levels: Parameters<ReturnType<typeof planWords>["piecePlace"]>[1];
  readonly pieces: readonly (PieceName & { readonly id: string })[];
  /** From which batting a piece is cut, where there are two. */
  readonly cutFrom?: (piece: PlannedPiece) => string | null;
  /** Lengths of what is made over the padding. */
  readonly facts?: StepFacts;
}

/** The act as a headline, and how it is done; the how may be empty. */
export type StepWords = readonly [act: string, how: string];

/** The next step as one or two sentences, an act first: screen, paper, speech and command say the same. */
export const stepSentence = (step: Step, saying: StepSaying): string => stepWords(step, saying).join(" ").trim();

export function stepWords(step: Step, saying: StepSaying): StepWords {
  const { piece } = step;
  switch (step.do) {
    case "prepare-form":
      return prepareWords(saying);
    case "mark-lines":
      return ["Mark the person’s level lines on the form.", `Straight down from its nape: ${linesBelow(saying)}.`];
    case "read-lines":
      return [
        "Measure the bare form on each line.",
        "All around, the front from side seam to side seam, and the width straight across.",
      ];
    case "trial":
      return [
        "Try the batting.",
        `Measure the waist, wrap a strip ${shownLength(trialHeight, saying.lengths)} tall three times around it, smooth and not stretched, and measure again. Then take the strip off.`,
      ];
    case "cut":
      return piece === null
        ? nothing
        : [`Cut ${thePiece(piece)}.`, cutSentence(piece, saying.lengths, saying.cutFrom?.(piece) ?? null)];
    case "stack":
      return piece === null ? nothing : stackWords(piece);
    case "pin":
      return piece === null ? nothing : [pinSentence(piece), atPlace(piece, saying)];
    case "carry-lines":
      return [
        `Carry the lines out over ${listed(named(step.pieceIds, saying))}.`,
        "Lay the style tape along each line again, and sew each level line, center front, center back and the sides with long contrast stitches through the outermost layer alone: tuning layers are slipped in beneath it.",
      ];
    case "read":
    case "read-all":
      return readWords(step);
    case "plan-anew":
      return ["Update the remaining pieces.", "The tape tells more than the plan knew."];
    case "tune":
      return step.act === null ? nothing : tuneWords(step.act, saying);
    case "baste":
      return basteWords(named(step.pieceIds, saying), saying.lengths);
    case "build-above":
    case "correct-above":
    case "mark-armhole":
      return step.build === null ? nothing : aboveStep(step.build, step, saying);
    case "look":
      return [
        "Look at the form from the front and from the side, beside the person.",
        "Measure apex height and spacing, back waist length and front waist length over the padding.",
      ];
    case "check":
      return checkWords(step);
    case "done":
      return [saying.pieces.length === 0 ? "There is nothing to pad." : "The stand-in is done.", largerPlace(saying)];
    default:
      return makingWords({ ...step, do: step.do }, saying);
  }
}

const nothing: StepWords = ["", ""];

const checkWords = ({ isTwice, levels }: Step): StepWords =>
  isTwice
    ? ["Two different measurements of one place.", "Say which one is correct, or measure again."]
    : [
        `Measure ${levelList(levels, levelNames.length)} once more.`,
        "What is typed is not possible with these pieces on. It is kept, and not used.",
      ];

/** A form larger than the person is said before any work goes into it. */
function prepareWords(saying: StepSaying): StepWords {
  const ready = readyWords(saying.facts?.form ?? unsaidForm, saying.lengths);
  const how = ["Lock and weight its base, and put the bra on if one is worn. It stays on.", ...ready].join(" ");
  const larger = largerPlace(saying);
  return larger === ""
    ? ["Make the form ready.", how]
    : ["Look at the form’s size first.", `${larger} If it is to be used all the same, make it ready. ${how}`];
}

/** Where the bare form is larger than the person, the worst place first, and what to do about it. */
function largerPlace({ levels, lengths }: StepSaying): string {
  const worst = largerLine(levels);
  return worst === null ? "" : girthTooLarge(worst.name, shownLength(worst.over, lengths));
}

const linesBelow = ({ levels, lengths }: StepSaying): string =>
  levels
    .map(({ name, depthBelowNape }) => `${levelWords[name]} ${shownLength(depthBelowNape.value, lengths)}`)
    .join(", ");

const stackWords = (piece: PlannedPiece): StepWords => [
  `Stack the ${layerCount(piece.layers.length)} of ${thePiece(piece)}.`,
  "Lying flat, baste them together, all but the outermost: that one stays pinned until tuning is done.",
];

const atPlace = (piece: PlannedPiece, { lengths, levels }: StepSaying): string =>
  `${upperFirst(planWords(lengths).piecePlace(piece, levels))}.`;

/** One reading is asked for by its own name; several by their level lines. */
function readWords({ names, levels, do: name }: Pick<Step, "names" | "levels" | "do">): StepWords {
  const [only] = names;
  if (only !== undefined && names.length === 1) {
    const level = levelWords[levels[0] ?? "waist"];
    if (/Girth$/.test(only)) return [`Measure the ${level}, all around.`, "Level and snug, over the padding."];
    return [`Measure the ${only.endsWith("FrontArc") ? "front" : "back"} ${level}.`, "From side seam to side seam."];
  }
  if (name === "read-all") return ["Take all measurements.", "Every level line all around, in front and in back."];
  return [`Measure ${levelList(levels, levelNames.length)}.`, "All around, and the front from side seam to side seam."];
}

/** The amount comes first, then the one act that mends it. */
function tuneWords(act: TuneAct, { lengths, cutFrom }: StepSaying): StepWords {
  const { level, half, amount, sense } = act.off;
  const off = `Padding ${shownLength(mm(amount), lengths)} ${sense} at the ${levelWords[level]}, in ${half}.`;
  switch (act.kind) {
    case "narrow":
      return [
        off,
        `Narrow ${thePiece(act.piece)} ${act.at.map(({ level, eachSide }) => `by ${shownLength(mm(eachSide), lengths)} at each side at the ${lineWords[level]}`).join(", ")}.`,
      ];
    case "takeOut":
      return [
        off,
        `Take out ${thePiece(act.piece)}. First snip the basting of what lies over it there, then slip it out.`,
      ];
    case "addLayer":
      return [off, `${pinSentence(act.piece)} ${cutSentence(act.piece, lengths, cutFrom?.(act.piece) ?? null)}`];
  }
}

const aboveStep = (build: BuildAbove, { turn }: Step, saying: StepSaying): StepWords =>
  turn === null ? buildWords(build, saying) : turnWords(build, turn, saying.lengths);

/** A stack above the bust is basted at once, so that nothing under the cover is left on pins. */
function buildWords(build: BuildAbove, { lengths, facts }: StepSaying): StepWords {
  const { act, how, reads, stays } = aboveWords(build, lengths, facts?.cloth !== "none");
  return [act, [...how, ...basted(build), ...reads, ...stays].join(" ")];
}

const basted = ({ act }: BuildAbove): readonly string[] =>
  act.what === "layers" ? ["Then baste it; pins out and counted."] : [];

/** The same where what the tape should read stands beside the fields it is typed into. */
export function buildHow(build: BuildAbove, { lengths, facts }: StepSaying): string {
  const { how, stays } = aboveWords(build, lengths, facts?.cloth !== "none");
  return [...how, ...basted(build), ...stays].join(" ");
}

function basteWords(names: readonly string[], lengths: LengthStep): StepWords {
  const inset = shownLength(handLengths.basteInset, lengths);
  const how = "Take the pins out and count them: as many as went in. You can stop for the day here.";
  return names.length < 3
    ? [`Baste ${listed(names)}.`, `With long stitches, ${inset} inside the edges. ${how}`]
    : ["Baste what is pinned.", `All ${names.length} pieces, with long stitches, ${inset} inside the edges. ${how}`];
}

const named = (ids: readonly string[], { pieces }: StepSaying): readonly string[] =>
  ids.map((id) => {
    const piece = pieces.find((one) => one.id === id);
    return piece === undefined ? id : thePiece(piece);
  });

function listed(names: readonly string[]): string {
  const last = names[names.length - 1] ?? "";
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} and ${last}`;
}
