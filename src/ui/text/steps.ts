import type { Step, TuneAct } from "../../app/steps/step";
import type { LengthStep } from "../../core/lengthText";
import type { PlannedPiece } from "../../core/plan/plan";
import { mm } from "../../core/units";
import { levelList } from "./learning";
import { levelWords, lineWords } from "./pictures";
import { cutSentence, layerCount, pinSentence, thePiece } from "./pieces";
import { planWords } from "./plan";
import { shownLength } from "./shownLength";

/** What is needed to say a step: how lengths are written, where the lines are, and how pieces are called by their ids. */
export interface StepSaying {
  readonly lengths: LengthStep;
  readonly levels: Parameters<ReturnType<typeof planWords>["piecePlace"]>[1];
  readonly pieces: readonly { readonly id: string; readonly name: string }[];
}

const allLevels = 5;

/** The next step as one or two sentences, an act first: screen, paper, speech and command say the same. */
export function stepSentence(step: Step, saying: StepSaying): string {
  const { piece } = step;
  switch (step.do) {
    case "prepare-form":
      return "Make the form ready: lock and weight its base, and put the bra on if one is worn. It stays on.";
    case "mark-lines":
      return `Mark the person’s level lines on the form, straight down from its nape: ${linesBelow(saying)}.`;
    case "read-lines":
      return "Measure the bare form on each line: all around, the front from side seam to side seam, and the width straight across.";
    case "trial":
      return "Try the batting: measure the waist, wrap a strip 3 in tall three times around it, smooth and not stretched, and measure again. Then take the strip off.";
    case "cut":
      return piece === null ? "" : `Cut ${thePiece(piece)}. ${cutSentence(piece, saying.lengths, null)}`;
    case "stack":
      return piece === null ? "" : stackSentence(piece);
    case "pin":
      return piece === null ? "" : pinAtPlace(piece, saying);
    case "carry-lines":
      return `Carry the level lines, center front, center back and the sides out over ${listed(named(step.pieceIds, saying))}: hang the tape again and sew them with a contrast running stitch.`;
    case "read":
      return `Measure ${levelList(step.levels, allLevels)}: all around, and the front from side seam to side seam.`;
    case "plan-anew":
      return "Update the remaining pieces: the tape tells more than the plan knew.";
    case "tune":
      return step.act === null ? "" : tuneSentence(step.act, saying.lengths);
    case "baste":
      return `Baste ${listed(named(step.pieceIds, saying))} with long stitches, 3/4 in inside the edges. Take the pins out and count them. You can stop for the day here.`;
    case "look":
      return "Look at the form from the front and from the side, beside the person, and measure apex height and spacing, back waist length and front waist length over the padding.";
    case "read-all":
      return "Take all measurements: every level line all around, in front and in back.";
    case "check":
      return `Measure ${levelList(step.levels, allLevels)} once more: what is typed is not possible with these pieces on. It is kept, and not used.`;
    case "done":
      return "The padding is done.";
  }
}

const linesBelow = ({ levels, lengths }: StepSaying): string =>
  levels.map(({ name, drop }) => `${levelWords[name]} ${shownLength(drop.value, lengths)}`).join(", ");

const stackSentence = (piece: PlannedPiece): string =>
  `Stack the ${layerCount(piece.layers.length)} of ${thePiece(piece)}, lying flat, and baste them together, all but the outermost: that one stays pinned until tuning is done.`;

const pinAtPlace = (piece: PlannedPiece, { lengths, levels }: StepSaying): string =>
  `${pinSentence(piece)} ${upperFirst(planWords(lengths).piecePlace(piece, levels))}.`;

function tuneSentence(act: TuneAct, lengths: LengthStep): string {
  switch (act.kind) {
    case "narrow":
      return `Narrow ${thePiece(act.piece)} ${act.at.map(({ level, eachSide }) => `by ${shownLength(mm(eachSide), lengths)} at each side at the ${lineWords[level]}`).join(", ")}.`;
    case "takeOut":
      return `Take out ${thePiece(act.piece)}. First snip the basting of what lies over it there, then slip it out.`;
    case "addLayer":
      return `${pinSentence(act.piece)} ${cutSentence(act.piece, lengths, null)}`;
  }
}

const named = (ids: readonly string[], { pieces }: StepSaying): readonly string[] =>
  ids.map((id) => pieces.find((piece) => piece.id === id)?.name ?? id);

function listed(names: readonly string[]): string {
  const last = names[names.length - 1] ?? "";
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} and ${last}`;
}

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
