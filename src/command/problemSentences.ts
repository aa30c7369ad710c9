import { isContradiction } from "../core/body/plausibility";
import { fineStep } from "../core/lengthText";
import type { Derived } from "../app/session/derived";
import type { Fitting } from "../document/fitting";
import { battingProblemText, fittingProblemText, measurementProblemText } from "../text/problems";

/** A sentence for everything that keeps a fitting from being planned, in its unit. */
export function problemSentences({ problems }: Derived, { unit }: Fitting): readonly string[] {
  const fine = fineStep[unit];
  return [
    ...problems.entries.map((problem) => fittingProblemText(problem, fine)),
    ...problems.measurements.filter(isContradiction).map((problem) => measurementProblemText(problem, fine)),
    ...problems.batting.map((problem) => battingProblemText(problem, fine)),
  ];
}
