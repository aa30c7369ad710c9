import { isConfirmed, type PadProgress } from "../../app/padProgress";
import type { Correction } from "../../core/plan/corrections";
import { homeTape } from "../../core/tolerances";

/**
 * Corrections by how firmly they stand, the largest first: where the tape read the level as it is now, something can be
 * taken off; where it is only believed to be over, the tape is asked first. The first of them belongs beside the next
 * action; what a tape at home can hardly tell is no such hurry.
 */
export interface CorrectionsHere {
  readonly first: Correction | null;
  readonly others: readonly Correction[];
  readonly believed: readonly Correction[];
}

export function correctionsHere(corrections: readonly Correction[], progress: PadProgress): CorrectionsHere {
  const isRead = ({ level }: Correction): boolean => isConfirmed(progress.now[level].girth);
  const firm = corrections.filter(isRead).toSorted((a, b) => b.over - a.over);
  const first = firm.find(({ over }) => over > homeTape) ?? null;
  return {
    first,
    others: firm.filter((correction) => correction !== first),
    believed: corrections.filter((correction) => !isRead(correction)),
  };
}
