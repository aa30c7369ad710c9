import type { Reread } from "../calibration/evidence";
import type { Piece } from "../padding/piece";

/** The work done so far: what is pinned now, what was read while, and which pieces are cut but not pinned. */
export interface PaddingSoFar {
  readonly pinned: readonly Piece[];
  readonly rereads: readonly Reread[];
  readonly cut: readonly Piece[];
  /** Ids of all pieces that ever lay on the form: a new piece never takes one of their names. */
  readonly everPinned?: readonly string[];
  /** Whether the trial was passed over: nobody knows how thick a layer turns out. */
  readonly isUntried?: boolean;
  /** The error that nine in ten of this person's tape readings stay within (mm). */
  readonly readingError: number;
}
