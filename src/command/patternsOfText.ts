import { levelNames } from "../core/body/vocabulary";
import { fineStep } from "../core/lengthText";
import { battingParts } from "../core/pattern/battingParts";
import { pieceBatting } from "../core/padding/piece";
import { err, ok, type Result } from "../core/result";
import { type CurrentStep, piecesNamed } from "../app/steps/currentStep";
import { patternFile, type PatternFile } from "../app/patterns/patternFile";
import type { TitledPart } from "../app/patterns/titledPart";
import { derivation } from "../app/session/derived";
import { type Fitting, fittingStep } from "../document/fitting";
import { readFittingText } from "../document/readFitting";
import { fittingProblemText } from "../text/problems";
import { layerWords, patternProblems } from "../text/patterns";
import { problemSentences } from "./problemSentences";

export interface FittingPatterns {
  readonly file: PatternFile;
  readonly parts: readonly TitledPart[];
}

/** From the text of a fitting file with its work to everything that is cut, or a sentence for every problem in the way. */
export function patternsOfText(text: string): Result<FittingPatterns, readonly string[]> {
  const fitting = readFittingText(text);
  if (!fitting.ok) return err(fitting.problem.map((problem) => fittingProblemText(problem, fineStep.cm)));
  const derived = derivation()(fitting.value);
  const current = derived.step();
  if (current === null) return err(problemSentences(derived, fitting.value));
  const parts = titledParts(current, fitting.value);
  if (parts.length === 0) return err([patternProblems.nothing]);
  const finished = current.replan.finished;
  const girths = Object.fromEntries(levelNames.map((name) => [name, finished[name].girth.value]));
  return ok({ file: patternFile(parts, girths), parts });
}

/** What was pinned first, then what is still to come, each piece once. */
function titledParts(current: CurrentStep, fitting: Fitting): readonly TitledPart[] {
  const { plan, replan } = current;
  const pieces = new Map(
    [...replan.plan.pieces, ...piecesNamed({ plan: { ...plan, pieces: [] }, replan }, fitting)].map((piece) => [
      piece.id,
      piece,
    ]),
  );
  return [...pieces.values()].flatMap((piece) =>
    battingParts(piece).map((part): TitledPart => {
      const layer = Number(part.id.slice(part.id.lastIndexOf("-") + 1));
      const isFinishing = pieceBatting(piece) === "finishing";
      const batting = (isFinishing ? fitting.finishingBatting?.name : undefined) ?? fitting.batting.name;
      return { part, ...layerWords(piece, layer, { levels: plan.levels, step: fittingStep(fitting), batting }) };
    }),
  );
}
