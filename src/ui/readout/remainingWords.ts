import type { TapePart } from "../../app/padProgress";
import type { LengthStep } from "../../core/lengthText";
import type { Millimetres } from "../../core/units";
import { remainingSentence, type Standing } from "../text/padding";
import { remaining, remainingText } from "./remaining";

/** One stretch of the tape: what is wanted of it, what it reads and on what ground, and whether its last layer is at hand. */
export interface Stretch {
  readonly part: TapePart;
  readonly wanted: Millimetres;
  readonly now: Millimetres;
  readonly standing: Standing;
  /** Whether a reading that is over says to ease the last layer. */
  readonly isLastOn: boolean;
}

/** What is left to go of a stretch, in the same words wherever it is written or said. */
export const remainingWords = ({ part, wanted, now, standing, isLastOn }: Stretch, step: LengthStep): string =>
  remainingSentence(remaining(wanted, now).kind, remainingText(wanted, now, step), part, standing, isLastOn);
