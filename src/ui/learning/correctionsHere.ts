import type { PadProgress } from "../../app/padProgress";
import type { Correction } from "../../core/plan/corrections";

/**
 * Corrections by how firmly they stand, the largest first: where the tape read the level as it is now, something can be
 * taken off; where it is only believed to be over, the tape is asked first.
 */
export interface CorrectionsHere {
  readonly firm: readonly Correction[];
  readonly believed: readonly Correction[];
}

export function correctionsHere(corrections: readonly Correction[], progress: PadProgress): CorrectionsHere {
  const isRead = ({ level }: Correction): boolean => progress.now[level].girth.kind !== "expected";
  return {
    firm: corrections.filter(isRead).toSorted((a, b) => b.over - a.over),
    believed: corrections.filter((correction) => !isRead(correction)),
  };
}
