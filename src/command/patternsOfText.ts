import type { Cloth } from "../core/cover/cloth";
import { fineStep } from "../core/lengthText";
import { err, ok, type Result } from "../core/result";
import { fittingPatterns, type FittingPatterns } from "../app/patterns/fittingPatterns";
import { chosenCloth } from "../app/steps/chosenCloth";
import { derivation } from "../app/session/derived";
import { fittingStep } from "../document/fitting";
import { readFittingText } from "../document/readFitting";
import { armNotes } from "../text/arm";
import { fittingProblemText } from "../text/problems";
import { patternTitles } from "../text/patterns";
import { problemSentences } from "./problemSentences";

/** Everything that is cut, and a sentence for each thing that was measured and still is not among it. */
interface NotedPatterns extends FittingPatterns {
  readonly notes: readonly string[];
}

/** From the text of a fitting file with its work to everything that is cut, or a sentence for every problem in the way. */
export function patternsOfText(text: string, cloth: Cloth | null): Result<NotedPatterns, readonly string[]> {
  const fitting = readFittingText(text);
  if (!fitting.ok) return err(fitting.problem.map((problem) => fittingProblemText(problem, fineStep.cm)));
  const derived = derivation()(fitting.value);
  const step = fittingStep(fitting.value);
  const chosen = chosenCloth(fitting.value);
  const patterns = fittingPatterns(
    derived,
    fitting.value,
    cloth === null ? { cloth: chosen.cloth, hasCover: chosen.kind !== "none" } : { cloth, hasCover: true },
    patternTitles(step),
  );
  return patterns === null
    ? err(problemSentences(derived, fitting.value))
    : ok({ ...patterns, notes: armNotes(patterns.arm, step) });
}
