import { formatLength, type LengthUnit } from "../../core/lengthText";
import { tapeAgreement } from "../../core/tolerances";
import { type Millimetres, mm } from "../../core/units";
import type { RemainingKind } from "../text/padding";

/** What is left to go between a reading and the one wanted: a kind, and an amount that is never negative. */
export interface Remaining {
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

/** Differences are small, so they are written finely: millimetres beside centimetres, eighths beside inches. */
export const formatRemaining = (amount: Millimetres, unit: LengthUnit): string =>
  unit === "in" ? formatLength(amount, "1/8 in") : formatLength(amount, "1 mm");
