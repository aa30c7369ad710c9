import type { Learning } from "../../../app/progress/learning";
import { useDerived } from "../useDerived";

/**
 * What the tape has taught, for paper: worked out at once, because a page that is being printed waits for nothing. It is
 * remembered, so a fitting whose padding was looked at costs nothing more.
 */
export const useLearned = (): Learning | null => useDerived().learning();
