import { layersAfter } from "../../core/above/aboveTurn";
import type { BetweenHeights } from "../../core/cover/betweenLines";
import { linesBetween } from "../../core/cover/coverGround";
import { type LevelName, levelNames } from "../../core/body/vocabulary";
import { trialTurns } from "../../core/plan/trialGain";
import type { Plan, PlannedPiece } from "../../core/plan/plan";
import type { Piece } from "../../core/padding/piece";
import type { CoverCloth, Fitting } from "../../document/fitting";
import { type PieceFile, pieceToFile, tenth } from "../../document/pieceFile";
import { makingOfStep } from "./makingSteps";
import type { Step } from "./step";

/**
 * The entry that is added to the log once a step is done, complete but for what is read: there null stands for a number in the
 * fitting's unit. An optional reading is passed over by leaving it out, and a whole one by an empty list.
 */
export type StepRecord = { readonly did: string } & { readonly [key: string]: unknown };

/** How a piece is called and where it lies, in the words of one language. */
export interface RecordWords {
  readonly pieceName: (piece: Piece) => string;
  readonly piecePlace: (piece: PlannedPiece, levels: Plan["levels"]) => string;
}

export interface RecordFrom {
  readonly plan: Plan;
  readonly fitting: Pick<Fitting, "batting" | "unit">;
  readonly words: RecordWords;
}

/** What a cover is made of unless somebody says otherwise: cut from panels, of a cloth that gives. */
export const usualCover: CoverCloth = "knit";

/** Null once everything is done. */
export function stepRecord(step: Step, from: RecordFrom): StepRecord | null {
  const { piece } = step;
  switch (step.do) {
    case "done":
      return null;
    case "prepare-form":
      return { did: "prepared", what: "form" };
    case "mark-lines":
      return { did: "marked", belowNapeMm: linePlaces(from.plan) };
    case "read-lines":
      return { did: "measured", readings: unread(step), belowNapeMm: linePlaces(from.plan) };
    case "trial":
      return {
        did: "trial",
        batting: from.fitting.batting.name,
        level: "waist",
        layers: trialTurns,
        before: null,
        after: null,
      };
    case "cut":
      return { did: "cut", pieceId: piece?.id };
    case "stack":
      return { did: "stacked", pieceId: piece?.id };
    case "pin":
      return piece === null ? null : { did: "pinned", piece: pieceFile(piece, from) };
    case "carry-lines":
      return { did: "linesCarried" };
    case "plan-anew":
      return { did: "replanned" };
    case "tune":
      return tuneRecord(step, from);
    case "baste":
      return { did: "basted", pieceIds: step.pieceIds };
    case "look":
      return { did: "looked" };
    case "read":
    case "read-all":
    case "check":
      return { did: "measured", readings: unread(step) };
    case "build-above":
    case "correct-above":
      return step.build?.act.what === "layers"
        ? { did: "builtAbove", build: step.build.id, layers: layersAfter(step.build, step.turn), readings: {} }
        : { did: "builtAbove", build: step.build?.id };
    case "mark-armhole":
      return { did: "builtAbove", build: step.build?.id };
    case "read-between":
      return { did: "measuredBetween", readings: {}, belowNapeMm: betweenPlaces(from.plan) };
    case "choose-cover":
      return { did: "coverChosen", cloth: usualCover };
    case "read-cover":
      return { did: "measured", readings: unread(step), over: "cover" };
    default:
      return { did: "made", what: makingOfStep[step.do] };
  }
}

const unread = ({ names }: Step) => Object.fromEntries(names.map((name) => [name, null]));

const linePlaces = ({ levels }: Plan): { readonly [level in LevelName]?: number } =>
  Object.fromEntries(
    levelNames.flatMap((name) => {
      const level = levels.find((one) => one.name === name);
      return level === undefined ? [] : [[name, tenth(level.depthBelowNape.value)]];
    }),
  );

/** Where the padding is best read between the lines, by the level above. */
const betweenPlaces = ({ levels }: Plan): BetweenHeights =>
  Object.fromEntries(linesBetween(levels).map(({ above, depthBelowNape }) => [above, tenth(depthBelowNape)]));

const pieceFile = (piece: PlannedPiece, { plan, words }: RecordFrom): PieceFile =>
  pieceToFile(piece, words.pieceName(piece), words.piecePlace(piece, plan.levels));

/** Whatever changes a pinned piece is the whole new piece under the same id; taken out it is unpinned. */
function tuneRecord({ act }: Step, from: RecordFrom): StepRecord | null {
  switch (act?.kind) {
    case "takeOut":
      return { did: "unpinned", pieceId: act.piece.id };
    case "narrow":
    case "addLayer":
      return { did: "pinned", piece: pieceFile(act.piece, from) };
    case undefined:
      return null;
  }
}
