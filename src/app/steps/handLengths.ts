import { tapeAgreement } from "../../core/tolerances";
import type { PlannedLevel } from "../../core/plan/plan";
import type { LevelName } from "../../core/body/vocabulary";
import { mm, type Millimetres } from "../../core/units";

/** Lengths that the hands are told in every language (mm). Common practice, no source. */
export const handLengths = {
  /** How far inside an edge is basted. */
  basteInset: mm(19),
  /** Of a cover: where it is fitted, at its other seams, and at the hem. */
  allowance: { fitted: mm(25.4), seam: mm(9.525), hem: mm(50.8) },
  /** From here on a cover stands off the back at the waist unless it is sewn down. A judgement. */
  sewnInFrom: mm(35),
} as const;

/** A tilt that adds less than this to the waist (mm) is less than a tape tells. */
export const tiltTold = 2;

/** Where the bare form is larger than the person by more than a tape tells, the worst line of all; null where it is nowhere. */
export function largerLine(
  levels: readonly Pick<PlannedLevel, "name" | "body" | "form">[],
): { readonly name: LevelName; readonly over: Millimetres } | null {
  const over = ({ body, form }: (typeof levels)[number]) => mm(form.girth.value - body.girth.value);
  const [worst] = levels.filter((level) => over(level) > tapeAgreement).toSorted((a, b) => over(b) - over(a));
  return worst === undefined ? null : { name: worst.name, over: over(worst) };
}
