import { levelNames } from "../core/body/vocabulary";
import { fineStep } from "../core/lengthText";
import type { PosteriorLength, PosteriorThickness } from "../core/calibration/calibration";
import type { PlannedPiece } from "../core/plan/plan";
import { err, ok, type Result } from "../core/result";
import { frontChangeAt } from "../core/plan/shortfalls";
import { nineInTen, onTarget } from "../core/tolerances";
import { type CurrentStep, piecesNamed } from "../app/steps/currentStep";
import { derivation } from "../app/session/derived";
import { shortfallCause } from "../app/progress/shortfallCause";
import { partOfStep } from "../app/steps/jobPart";
import { stepMinutes } from "../app/steps/stepMinutes";
import { type RecordWords, stepRecord } from "../app/steps/stepRecord";
import { type Fitting, fittingStep } from "../document/fitting";
import { readFittingText } from "../document/readFitting";
import { pieceToFile, tenth } from "../document/pieceFile";
import { seamShiftToFile, shortfallToFile } from "../document/planFile";
import type { StepFile } from "../document/stepFile";
import { cutFrom } from "../text/batting";
import { planWords } from "../text/plan";
import { fittingProblemText } from "../text/problems";
import { stepSentence } from "../text/steps";
import { problemSentences } from "./problemSentences";

/** From the text of a fitting file with its work to the one next step, or a sentence for every problem in the way. */
export function nextOfText(text: string): Result<StepFile, readonly string[]> {
  const fitting = readFittingText(text);
  return fitting.ok
    ? nextOfFitting(fitting.value)
    : err(fitting.problem.map((problem) => fittingProblemText(problem, fineStep.cm)));
}

/** Whoever asks again and again gives a derivation, which remembers. */
export function nextOfFitting(fitting: Fitting, derive = derivation()): Result<StepFile, readonly string[]> {
  const derived = derive(fitting);
  const current = derived.step();
  return current === null ? err(problemSentences(derived, fitting)) : ok(stepFile(current, fitting));
}

function stepFile({ step, plan, replan, facts }: CurrentStep, fitting: Fitting): StepFile {
  const lengths = fittingStep(fitting);
  const words = planWords(lengths);
  const record = stepRecord(step, { plan, fitting, words });
  const expected = Object.entries(step.expected).map(([name, value]) => [name, tenth(value)] as const);
  return {
    version: 1,
    step: {
      part: partOfStep[step.do],
      do: step.do,
      say: stepSentence(step, {
        lengths,
        levels: plan.levels,
        pieces: piecesNamed({ plan, replan }, fitting),
        cutFrom: cutFrom(fitting.batting.name, fitting.finishingBatting?.name ?? null),
        facts,
      }),
      minutes: stepMinutes(step),
      ...(step.piece === null ? {} : { piece: toFile(step.piece, plan.levels, words) }),
      levels: [...step.levels],
      expectedMm: Object.fromEntries(expected),
      toleranceMm: Object.fromEntries(expected.map(([name]) => [name, onTarget])),
      ...(record === null ? {} : { record }),
    },
    ...layersOf(replan.calibration, fitting),
    rest: restOf({ step, plan, replan, facts }, words),
  };
}

const toFile = (piece: PlannedPiece, levels: CurrentStep["plan"]["levels"], words: RecordWords) =>
  pieceToFile(piece, words.pieceName(piece), words.piecePlace(piece, levels));

function layersOf({ building, finishing }: CurrentStep["replan"]["calibration"], fitting: Fitting) {
  const layer = (batting: string, { layer: thickness, least, most }: PosteriorThickness) => ({
    batting,
    thicknessMm: hundredth(thickness),
    lowMm: hundredth(least),
    highMm: hundredth(most),
  });
  const first = layer(fitting.batting.name, building);
  const { finishingBatting } = fitting;
  return {
    layer: first,
    layers: finishingBatting === undefined ? [first] : [first, layer(finishingBatting.name, finishing)],
  };
}

const hundredth = (length: number): number => Math.round(100 * length) / 100;

/** Steps after which nothing more is pinned, as all that come after the padding. */
const endings: ReadonlySet<CurrentStep["step"]["do"]> = new Set(["baste", "look", "read-all"]);

function restOf({ step, plan, replan }: CurrentStep, words: ReturnType<typeof planWords>): StepFile["rest"] {
  const { plan: rest } = replan;
  const isOver = endings.has(step.do) || partOfStep[step.do] !== "padding";
  const finished = isOver ? replan.calibration.levels : replan.finished;
  return {
    pieces: (isOver ? [] : rest.pieces).map((piece) => toFile(piece, plan.levels, words)),
    shortfalls: rest.shortfalls.map((shortfall) =>
      shortfallToFile(shortfall, words.shortfallAdvice(shortfall, shortfallCause(rest, shortfall))),
    ),
    seamShifts: rest.seamShifts.map((shift) => seamShiftToFile(shift, words.seamShift(shift))),
    predicted: Object.fromEntries(
      levelNames.map((name) => {
        const moved = frontChangeAt(rest.seamShifts, name);
        const { girth, frontArc, backArc } = finished[name];
        return [
          name,
          {
            girthMm: interval(girth, 0),
            frontArcMm: interval(frontArc, moved),
            backArcMm: interval(backArc, -moved),
          },
        ];
      }),
    ) as StepFile["rest"]["predicted"],
  };
}

const interval = ({ value, standardDeviation }: PosteriorLength, moved: number) => ({
  valueMm: tenth(value + moved),
  lowMm: tenth(value + moved - nineInTen * standardDeviation),
  highMm: tenth(value + moved + nineInTen * standardDeviation),
});
