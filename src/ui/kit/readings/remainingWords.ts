import type { TapePart } from "../../../app/progress/padProgress";
import type { LengthStep } from "../../../core/lengthText";
import type { Millimetres } from "../../../core/units";
import { remainingSentence, type Standing } from "../../../text/padding";
import { remaining, remainingText } from "./remaining";

/** One stretch of the tape: what it reads on the person, what it reads now, and on what ground. */
export interface Stretch {
  readonly part: TapePart;
  readonly wanted: Millimetres;
  readonly now: Millimetres;
  readonly standing: Standing;
}

/** What is left to go of a stretch, in the same words wherever it is written or said. */
export const remainingWords = ({ part, wanted, now, standing }: Stretch, step: LengthStep): string =>
  remainingSentence(remaining(wanted, now).kind, remainingText(wanted, now, step), part, standing);
