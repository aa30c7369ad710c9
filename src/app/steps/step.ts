import type { AboveTurn } from "../../core/above/aboveTurn";
import type { BuildAbove } from "../../core/above/buildAbove";
import type { LevelName, MeasurementName } from "../../core/body/vocabulary";
import type { Piece } from "../../core/padding/piece";
import type { PlannedPiece } from "../../core/plan/plan";

/** What can be next, in the order the work goes through. */
const stepNames = [
  "prepare-form",
  "mark-lines",
  "read-lines",
  "trial",
  "cut",
  "stack",
  "pin",
  "carry-lines",
  "read",
  "plan-anew",
  "tune",
  "baste",
  "build-above",
  "correct-above",
  "look",
  "read-all",
  "check",
  "read-between",
  "choose-cover",
  "cut-cover",
  "sew-cover",
  "fit-cover",
  "close-cover",
  "read-cover",
  "correct-cover",
  "hem-cover",
  "waist-tape",
  "mark-armhole",
  "style-lines",
  "cut-arm",
  "sew-arm",
  "fill-arm",
  "hang-arm",
  "put-away",
  "done",
] as const;
export type StepName = (typeof stepNames)[number];

/** The parts of the whole job: until the padding is done, and what is made over it. */
export type JobPart = "padding" | "cover" | "waist" | "arm" | "after";

/**
 * The one next step of the work, from which the padding screen, the class view, paper, speech and the command take their words.
 * Which piece is at hand, where the tape is to be laid, and what it should read there (mm).
 */
export interface Step {
  readonly do: StepName;
  readonly piece: PlannedPiece | null;
  readonly levels: readonly LevelName[];
  /** What is read, in the order it is asked for. */
  readonly names: readonly MeasurementName[];
  readonly expected: { readonly [name in MeasurementName]?: number };
  /** What a tune does to its piece; null for every other step. */
  readonly act: TuneAct | null;
  /** Pieces that are basted or over which lines are carried. */
  readonly pieceIds: readonly string[];
  /** The place of a check was read twice, and the two readings cannot both be right. */
  readonly isTwice: boolean;
  /** Of a cover that is corrected: what it reads more than the person, or less where negative (mm). */
  readonly off: readonly CoverOff[];
  /** What is built or marked above the bust line; null for every other step. */
  readonly build: BuildAbove | null;
  /** Of a build that is corrected: the layer more or less. */
  readonly turn: AboveTurn | null;
}

/** How much more than the person a level reads over the cover, all around (mm). */
export interface CoverOff {
  readonly level: LevelName;
  readonly over: number;
}

/** One act with its amount (mm): the tuning layer narrowed at each side, a piece taken out, or one more tuning layer laid there. */
export type TuneAct = { readonly off: TuneOff } & (
  | {
      readonly kind: "narrow";
      /** The whole piece as it is after that, with what the tape should read then. */
      readonly piece: PlannedPiece;
      readonly at: readonly { readonly level: LevelName; readonly eachSide: number }[];
    }
  | { readonly kind: "takeOut"; readonly piece: Piece }
  | { readonly kind: "addLayer"; readonly piece: PlannedPiece }
);

/** Where the padding is off most, and by how much (mm), as it most probably is. */
export interface TuneOff {
  readonly level: LevelName;
  readonly half: "front" | "back";
  readonly amount: number;
  readonly sense: "over" | "short";
}

export const step = (name: StepName, more: Partial<Omit<Step, "do">> = {}): Step => ({
  do: name,
  piece: null,
  levels: [],
  names: [],
  expected: {},
  act: null,
  pieceIds: [],
  isTwice: false,
  off: [],
  build: null,
  turn: null,
  ...more,
});
