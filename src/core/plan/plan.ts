import type { LevelName, ByLevel } from "../body/vocabulary";
import type { Reading } from "../body/reading";
import type { Section } from "../body/section";
import type { TorsoLine } from "../body/torsoCurve";
import type { FormKnowledge } from "../form/formAtDepths";
import type { Piece } from "../padding/piece";
import type { Millimetres, SquareMillimetres } from "../units";
import type { FormMatter } from "./formMatters";

/** What the tape reads at one level: all round, and the front and back from side seam to side seam (mm). */
export interface TapeReading {
  readonly girth: Millimetres;
  readonly frontArc: Millimetres;
  readonly backArc: Millimetres;
}

export type TapeReadings = ByLevel<TapeReading>;

export interface KnownReadings {
  readonly girth: Reading;
  readonly frontArc: Reading;
  readonly backArc: Reading;
}

/**
 * One level of the plan, at the BODY's depth below the nape: the body, the bare form at that same depth (interpolated
 * between the form's own levels), and what the tape will read over the whole stack after the last piece.
 */
export interface PlannedLevel {
  readonly name: LevelName;
  readonly depthBelowNape: Reading;
  readonly body: KnownReadings;
  readonly bodySection: Section;
  readonly form: KnownReadings;
  /** How the bare form is known here. */
  readonly known: FormKnowledge["kind"];
  readonly formSection: Section;
  readonly predicted: TapeReading;
  /** What else is known of the curves of body and bare form between this level and the next below. */
  readonly below: { readonly body: readonly TorsoLine[]; readonly form: readonly TorsoLine[] };
}

/**
 * Something padding cannot do. At a level: the form is larger than the body there (or an arc cannot be reached without
 * taking the girth over), by this amount. Lengths: a fixed length of the form that the body does not share.
 */
export type Shortfall =
  | {
      readonly what: "girth" | "frontArc" | "backArc";
      readonly level: LevelName;
      readonly amount: Millimetres;
      /** tooLarge: the tape will read more than the body; staysShort: it will read less. */
      readonly sense: "tooLarge" | "staysShort";
    }
  | {
      readonly what: "length";
      readonly level: LevelName;
      readonly amount: Millimetres;
      readonly sense: "tooLarge" | "staysShort";
      readonly length:
        | "shoulderLength"
        | "neckGirth"
        | "acrossShoulders"
        | "upperBackWidth"
        | "shoulderDrop"
        | "apexHeight";
    };

/**
 * The side seam re-marked on the padded form: the mark moves this far on each side (mm, measured along the surface),
 * towards the front or the back, so that the front and back arcs read right while the girth stays.
 */
export interface SeamShift {
  readonly level: LevelName;
  readonly perSide: Millimetres;
  readonly towards: "front" | "back";
}

/** What the tool worked out: pieces in the order of pinning, what the tape must read after each, and what stays short. */
export interface Plan {
  /** `lines`: the bare form was read on every one of the person's lines. `draft`: what it reads there is reckoned. */
  readonly basis: "draft" | "lines";
  /** What the first readings may miss by: nine in ten lie within it (mm). */
  readonly mayMiss: Millimetres;
  readonly matters: readonly FormMatter[];
  readonly levels: readonly PlannedLevel[];
  readonly pieces: readonly PlannedPiece[];
  readonly shortfalls: readonly Shortfall[];
  readonly seamShifts: readonly SeamShift[];
  readonly battingArea: SquareMillimetres;
  /** Layers of all pieces together: each is cut in its own shape. */
  readonly shapesToCut: number;
  readonly bareForm: TapeReadings;
}

/** A piece with what the tape must read at every level once it and all before it are pinned. */
export interface PlannedPiece extends Piece {
  readonly readingsAfter: TapeReadings;
}
