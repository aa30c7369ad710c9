import type { Measurements } from "../core/body/measurements";
import { checkMeasurements, isContradiction, type MeasurementProblem } from "../core/body/plausibility";
import { checkBatting } from "../core/checkBatting";
import { formAsRead } from "../core/form/formLines";
import { chooseForm, type RankedSize } from "../core/plan/chooseForm";
import { fineStep } from "../core/lengthText";
import type { Batting } from "../core/material";
import { planFitting } from "../core/plan/planFitting";
import { assert, err, ok, type Result } from "../core/result";
import { type Fitting, fittingStep } from "../document/fitting";
import { readFittingText } from "../document/readFitting";
import { type FormOfFitting, fittingMeasurements } from "../document/fittingMeasurements";
import { formTables } from "../document/formTables";
import { startingBatting } from "../document/startingBatting";
import { tenth } from "../document/pieceFile";
import { type PlanFile, planFile } from "../document/planFile";
import { battingWords } from "../text/batting";
import { planWords } from "../text/plan";
import { battingProblemText, fittingProblemText, measurementProblemText } from "../text/problems";

/** From the text of a fitting file to its plan file, or a sentence for every problem that stands in the way. */
export function planOfText(text: string): Result<PlanFile, readonly string[]> {
  const fitting = readFittingText(text);
  return fitting.ok
    ? planOfFitting(fitting.value)
    : err(fitting.problem.map((problem) => fittingProblemText(problem, fineStep.cm)));
}

/** The same for a fitting that has been read. Problems of the body, the form and the batting are told together. */
export function planOfFitting(fitting: Fitting): Result<PlanFile, readonly string[]> {
  const fine = fineStep[fitting.unit];
  const lengths = fittingMeasurements(fitting);
  if (!lengths.ok) return err(lengths.problem.map((problem) => fittingProblemText(problem, fine)));

  const { body, batting, finishingBatting } = lengths.value;
  const { lines } = lengths.value.form;
  const ofBody = checkMeasurements(body, "body");
  const chosen = formFor(lengths.value.form, ofBody.some(isContradiction) ? null : body, batting);
  const problems = [...ofBody, ...(chosen ? checkMeasurements(formAsRead(chosen.form, lines, null), "form") : [])];
  const told = (kind: MeasurementProblem["severity"]): readonly string[] =>
    problems.filter(({ severity }) => severity === kind).map((problem) => measurementProblemText(problem, fine));
  const inTheWay = [
    ...told("contradiction"),
    ...[batting, ...(finishingBatting ? [finishingBatting] : [])]
      .flatMap(checkBatting)
      .map((problem) => battingProblemText(problem, fine)),
  ];
  if (chosen === null || inTheWay.length > 0) return err(inTheWay);

  const plan = planFitting({
    body,
    form: chosen.form,
    lines,
    batting,
    ...(finishingBatting ? { finishingBatting } : {}),
  });
  const origin = {
    unit: fitting.unit,
    table: fitting.form.table ?? null,
    tableSource: formTables.find(({ id }) => id === fitting.form.table)?.source,
    size: chosen.size ?? (fitting.form.size === undefined ? null : String(fitting.form.size)),
    measured: lengths.value.form.measured,
    ranking: chosen.ranking.map(({ size, shortfallTotal, paddingTotal }) => ({
      size,
      shortfallMm: tenth(shortfallTotal),
      paddingMm: tenth(paddingTotal),
    })),
    pleaseCheck: [
      ...(isStartingBatting(fitting) ? [battingWords.startsWith(fitting.batting.name)] : []),
      ...told("pleaseCheck"),
    ],
  };
  return ok(planFile(plan, planWords(fittingStep(fitting)), origin));
}

/** Whether nobody has said which batting there is. */
const isStartingBatting = ({ batting, unit }: Fitting): boolean => {
  const { name, layerThickness } = startingBatting(unit);
  return batting.name === name && batting.layerThickness === layerThickness;
};

interface ChosenForm {
  readonly form: Measurements;
  readonly size: string | null;
  readonly ranking: readonly RankedSize[];
}

/** The form as it is known, or the best size of its table for a body that was measured without contradiction. */
function formFor(form: FormOfFitting, body: Measurements | null, batting: Batting): ChosenForm | null {
  if (form.kind === "known") return { form: form.measurements, size: null, ranking: [] };
  if (body === null) return null;
  const ranking = chooseForm(body, form.table, batting);
  const best = ranking[0];
  assert(best !== undefined, "a size chart has sizes");
  return { form: best.measurements, size: best.size, ranking };
}
