import { isConfirmed, type NowReading, type TapePart } from "../app/progress/padProgress";
import { type LengthStep, lengthSteps, roundLength } from "../core/lengthText";
import { tapeAgreement } from "../core/tolerances";
import { type Millimetres, mm } from "../core/units";
import { type RemainingKind, remainingSentence, type Standing } from "./padding";
import { shownLength } from "./shownLength";
import { writtenLength } from "./writtenLength";

/** What is left to go between a reading and the one wanted: a kind, and an amount that is never negative. */
interface Remaining {
  readonly kind: RemainingKind;
  readonly amount: Millimetres;
}

/** Within half of what a tape is read to, the reading agrees and there is nothing left to do. */
export function remaining(wanted: Millimetres, now: Millimetres): Remaining {
  const left = wanted - now;
  const amount = mm(Math.abs(left));
  if (amount < tapeAgreement) return { kind: "there", amount };
  return { kind: left > 0 ? "toGo" : "over", amount };
}

/**
 * The difference as it is shown, between two lengths that are shown beside it: at the one step of all lengths, so that a
 * person who subtracts one from the other finds it, and never nothing where something is left.
 */
export const remainingText = (wanted: Millimetres, now: Millimetres, step: LengthStep): string =>
  amountText(mm(Math.abs(roundLength(wanted, step) - roundLength(now, step))), step);

/** An amount that is something, at the step of all lengths: one step at least. */
export function amountText(amount: Millimetres, step: LengthStep): string {
  const isNothing = writtenLength(amount, step, "bare") === "0";
  return isNothing ? shownLength(oneStep(step), step) : shownLength(amount, step);
}

const oneStep = (step: LengthStep): Millimetres => mm(unitMm[lengthSteps[step].unit] / lengthSteps[step].parts);
const unitMm = { in: 25.4, cm: 10, mm: 1 } as const;

/** One stretch of the tape: what it reads on the person, what it reads now, and on what ground. */
interface Stretch {
  readonly part: TapePart;
  readonly wanted: Millimetres;
  readonly now: Millimetres;
  readonly standing: Standing;
}

/** What is left to go of a stretch, in the same words wherever it is written or said. */
export const remainingWords = ({ part, wanted, now, standing }: Stretch, step: LengthStep): string =>
  remainingSentence(remaining(wanted, now).kind, remainingText(wanted, now, step), part, standing);

/** What is behind a figure of the tape, as the sentences tell it: a reading that follows from two others is one. */
export const standingOf = (now: NowReading): Standing =>
  isConfirmed(now) ? "read" : now.kind === "bare" ? "bare" : "expected";
